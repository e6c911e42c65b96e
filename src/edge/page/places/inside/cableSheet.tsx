import type { CableFindings, Findings } from '../../../../findings/schema.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import type { Reading } from '../../../../trial/trial.ts';
import { Beside } from './beside.tsx';
import { CablePhotos } from './cablePhotos.tsx';
import { FurtherFigures } from './furtherFigures.tsx';
import { LabelReadings } from './labelReadings.tsx';
import { ReadingsAndFit } from './readingsAndFit.tsx';
import { SpreadFrom } from './spreadFrom.tsx';
import { SumsAndGaps } from './sumsAndGaps.tsx';

interface SheetProps {
  findings: Findings;
  cable: CableFindings;
  readings: readonly Reading[];
}

/** All that was found about one cable: what its label can mean, the readings behind it, and what the ± is made of. */
export function CableSheet({ findings, cable, readings }: SheetProps) {
  return (
    <div class="sheet">
      <p class="said">{noBreak(cable.sentence)}</p>
      <div class="columns">
        <div>
          <LabelReadings cable={cable} />
          <FurtherFigures cable={cable} />
        </div>
        <div>
          <ReadingsAndFit cable={cable} readings={readings} />
          <SumsAndGaps cable={cable} />
        </div>
        <div>
          <SpreadFrom cable={cable} />
          <Beside findings={findings} cable={cable} />
        </div>
      </div>
      <CablePhotos cable={cable.cable} />
    </div>
  );
}
