import { useEffect } from 'preact/hooks';
import { numberWordFirst } from '../../../../units/numberWords.ts';
import { Frame } from '../../parts/frame.tsx';
import { readsOnly } from '../../store/devices.ts';
import { loadShelf, shelf } from '../../store/shelf.ts';
import { AllCables } from './allCables.tsx';
import { BringIn } from './bringIn.tsx';
import { AddPhone, NotKnownHere } from './otherDevices.tsx';
import { SixFields } from './sixFields.tsx';
import { StartTrial } from './startTrial.tsx';
import { TrialList } from './trialList.tsx';

/** The first place: all trials, one cable in six fields, and the door for readings from elsewhere. */
export function Shelf() {
  useEffect(() => {
    void loadShelf();
  }, []);
  return (
    <Frame title="Shelf" places={[{ name: 'Shelf', href: '/', here: true, state: '' }]} units>
      <h1>{sentence()}</h1>
      {readsOnly.value && (
        <p>This device only reads: it shows what was published. Trials are started and recorded at the bench.</p>
      )}
      <NotKnownHere />
      <TrialList />
      <AllCables />
      {!readsOnly.value && <StartTrial open={shelf.value.state === 'ready' && shelf.value.trials.length === 0} />}
      <SixFields />
      {!readsOnly.value && <BringIn />}
      <AddPhone />
    </Frame>
  );
}

/** The place's sentence: what stands here and what to do with it. */
function sentence(): string {
  const now = shelf.value;
  if (now.state === 'loading') return 'Looking at the shelf.';
  if (now.state === 'failed') return 'The shelf cannot be read just now.';
  if (readsOnly.value) return published(now.trials.length);
  if (now.trials.length === 0)
    return 'The shelf is empty. Start a trial, ask about one cable, or bring your readings in.';
  const standing = now.trials.filter(({ putAway }) => putAway === undefined).length;
  if (standing === 0)
    return 'All trials are put away. Take one up again, start another, ask about a single cable, or bring readings in.';
  if (standing === 1)
    return 'One trial stands on the shelf. Open it, start another, ask about a single cable, or bring readings in.';
  return `${numberWordFirst(standing)} trials stand on the shelf. Open one, start another, ask about a single cable, or bring readings in.`;
}

/** The sentence for a device that only reads, by how many trials have a sealed part. */
function published(count: number): string {
  if (count === 0) return 'Nothing is published yet. One cable can be asked about below.';
  return count === 1
    ? 'One trial is published. Open it, or ask about a single cable.'
    : `${numberWordFirst(count)} trials are published. Open one, or ask about a single cable.`;
}
