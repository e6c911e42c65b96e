import { controlGap } from '../../../../findings/controlGap.ts';
import type { Findings } from '../../../../findings/schema.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { Name } from '../../parts/name.tsx';

/** The check of the tools that stands before every finding: a piece whose metal nobody doubts. */
export function ControlPiece({ findings }: { findings: Findings }) {
  if (findings.control.length === 0) {
    return (
      <p class="control note">
        {controlGap(findings.cables) ??
          'No control piece was measured. A length of plain solid copper building wire, weighed and ohmed like a cable, would show whether scale, rule, meter and thermometer agree.'}
      </p>
    );
  }
  return (
    <ul class="control">
      {findings.control.map((control) => (
        <li key={control.cable}>
          <b>{control.agrees ? 'The tools first.' : 'The tools first: they disagree.'}</b> {noBreak(control.sentence)}{' '}
          <span class="note">
            Control piece: <Name>{nameOf(findings, control.cable)}</Name>
          </span>
        </li>
      ))}
    </ul>
  );
}

const nameOf = (findings: Findings, id: string) => findings.cables.find((cable) => cable.cable === id)?.name || id;
