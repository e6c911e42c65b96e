import type { Findings } from '../../../../findings/schema.ts';
import type { Flex } from '../../../../findings/shapes/flex.ts';
import { bandSharing } from '../../../../report/bend/bendSentences.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import type { Trial } from '../../../../trial/trial.ts';
import type { Assay } from '../../store/assay.ts';
import { signOf } from '../../store/bench/names.ts';
import { folded } from '../../store/journal/journal.ts';
import type { BentCable } from './bendColumns.tsx';
import { DroopSection } from './droopSection.tsx';
import { HandSection } from './handSection.tsx';
import { InBetween } from './inBetween.tsx';
import { PhotosOfPiece } from './photosOfPiece.tsx';
import { PushSection } from './pushSection.tsx';

interface SheetProps {
  now: Assay;
  findings: Findings;
  flex: Flex;
  cable: BentCable;
}

/** One cable's curves, and what they say. */
export function BendSheet({ now, findings, flex, cable }: SheetProps) {
  const { bent } = cable;
  const found = findings.cables.find((each) => each.cable === cable.cable)!;
  const sharing = bandSharing(cable.cable, flex.cables);
  const tied = names(findings, bent?.cannot_be_told_from ?? []);
  return (
    <div class="sheet bend-sheet">
      {tied !== '' && (
        <p class="said">{noBreak(`By ${bent?.method ?? 'measurement'} it cannot be told from ${tied}.`)}</p>
      )}
      {sharing !== '' && <p class="note">{noBreak(sharing)}</p>}
      <div class="columns">
        <div>
          <DroopSection bent={bent} found={found} readings={now.readings} signOf={signIn(folded.value)} />
          <PhotosOfPiece now={now} cable={cable.cable} />
        </div>
        <div>
          <PushSection bent={bent} readings={now.readings} />
        </div>
        <div>
          <InBetween bent={bent} found={found} />
          <HandSection flex={flex} cable={cable.cable} findings={findings} />
        </div>
      </div>
    </div>
  );
}

/** A piece by its tag; by its row where the journal is not open. */
const signIn = (trial: Trial | null) => (specimen: string) => (trial === null ? specimen : signOf(trial, specimen));

function names(findings: Findings, cables: readonly string[]): string {
  const list = cables.map((id) => findings.cables.find((c) => c.cable === id)?.name || id);
  return list.length < 2 ? list.join('') : `${list.slice(0, -1).join(', ')} and ${list.at(-1)}`;
}
