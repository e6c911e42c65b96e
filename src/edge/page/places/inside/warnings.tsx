import type { Findings } from '../../../../findings/schema.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { Name } from '../../parts/name.tsx';

/** What somebody should know before quoting a figure from this page. */
export function Warnings({ findings }: { findings: Findings }) {
  if (findings.warnings.length === 0) return null;
  return (
    <section class="warnings" aria-labelledby="warnings">
      <h2 id="warnings">Before you quote this</h2>
      <ul>
        {findings.warnings.map((warning) => (
          <li key={`${warning.code} ${warning.cable} ${warning.text}`}>
            {warning.cable !== null && (
              <>
                <Name>{findings.cables.find((cable) => cable.cable === warning.cable)?.name || warning.cable}</Name>:{' '}
              </>
            )}
            {noBreak(warning.text)}
          </li>
        ))}
      </ul>
    </section>
  );
}
