import type { CableFindings, Findings } from '../../../../findings/schema.ts';
import type { Entry } from '../../../../journal/entry.ts';
import { Beside } from './beside.tsx';
import { FurtherFigures } from './furtherFigures.tsx';
import { LabelReadings } from './labelReadings.tsx';
import { ReadingsAndFit } from './readingsAndFit.tsx';
import { SpreadFrom } from './spreadFrom.tsx';
import { SumsAndGaps } from './sumsAndGaps.tsx';

interface SheetProps {
  findings: Findings;
  cable: CableFindings;
  entries: readonly Entry[];
}

/** All that was found about one cable: what its label can mean, the readings behind it, and what the ± is made of. */
export function CableSheet({ findings, cable, entries }: SheetProps) {
  return (
    <div class="sheet">
      <p class="said">{cable.sentence}</p>
      <div class="columns">
        <div>
          <LabelReadings cable={cable} />
          <FurtherFigures cable={cable} />
        </div>
        <div>
          <ReadingsAndFit cable={cable} entries={entries} />
          <SumsAndGaps cable={cable} />
        </div>
        <div>
          <SpreadFrom cable={cable} />
          <Beside findings={findings} cable={cable} />
        </div>
      </div>
    </div>
  );
}
