import type { CableFindings, Findings } from '../../../../findings/schema.ts';
import type { Entry } from '../../../../journal/entry.ts';
import { Beside } from './beside.tsx';
import { LabelReadings } from './labelReadings.tsx';
import { MoreOnThePiece } from './moreOnThePiece.tsx';
import { ReadingsAndFit } from './readingsAndFit.tsx';
import { SpreadFrom } from './spreadFrom.tsx';

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
        <LabelReadings cable={cable} />
        <ReadingsAndFit cable={cable} entries={entries} />
        <SpreadFrom cable={cable} />
      </div>
      <div class="columns lower">
        <MoreOnThePiece cable={cable} />
        <Beside findings={findings} cable={cable} />
      </div>
    </div>
  );
}
