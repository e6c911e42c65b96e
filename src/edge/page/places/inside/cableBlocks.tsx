import type { CableFindings, Findings } from '../../../../findings/schema.ts';
import type { Reading } from '../../../../trial/trial.ts';
import { chartOf } from '../../parts/chartOf.ts';
import { IntervalAxis, IntervalRow } from '../../parts/intervals.tsx';
import { noAreaWords } from '../../parts/noArea.ts';
import { HeadlineOutcome } from '../../parts/outcomeWord.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { PAPER_WIDTH, printing } from '../../store/media.ts';
import { units } from '../../store/units.ts';
import { CableSheet } from './cableSheet.tsx';
import { sheetId, Turn } from './cableTable.tsx';
import { columnsFor } from './columns.tsx';

interface BlocksProps {
  findings: Findings;
  cables: readonly CableFindings[];
  readings: readonly Reading[];
  open: ReadonlySet<string>;
}

/** Width of a block before it has been measured, px. */
const FIRST_BLOCK = 354;

/** On paper two blocks stand side by side, 24 px apart. */
const PAPER_BLOCK = (PAPER_WIDTH - 24) / 2;

/** The cables as one block each, where a table has no room. Every chart has the same axis, so that they can be compared. */
export function CableBlocks({ findings, cables, readings, open }: BlocksProps) {
  const [first, width] = useWidth<HTMLDivElement>(FIRST_BLOCK);
  const { area, rest } = columnsFor(cables, units.value);
  const chart = chartOf(cables, printing.value ? PAPER_BLOCK : width, units.value);
  return (
    <ul class="blocks">
      {cables.map((cable, index) => (
        <li key={cable.cable} class={open.has(cable.cable) ? 'open' : ''}>
          <Turn cable={cable} index={index} open={open.has(cable.cable)} />
          <div class="lead">
            {cable.conductor_area === null ? (
              <span class="unknown">{noAreaWords(cable)}</span>
            ) : (
              <span>
                {area.cells[index]} <span class="unknown">{area.unit}</span>
              </span>
            )}
            <HeadlineOutcome cable={cable} />
          </div>
          <div class="bar" ref={index === 0 ? first : undefined}>
            <IntervalAxis chart={chart} cable={chart.shared ? undefined : cable} />
            <IntervalRow chart={chart} cable={cable} />
          </div>
          <dl class="figures">
            {rest.map((column) => (
              <div key={column.id}>
                <dt>
                  {column.head} {column.unit}
                </dt>
                <dd>{column.cells[index]}</dd>
              </div>
            ))}
          </dl>
          {open.has(cable.cable) && (
            <div id={sheetId(index)}>
              <CableSheet findings={findings} cable={cable} readings={readings} />
            </div>
          )}
        </li>
      ))}
    </ul>
  );
}
