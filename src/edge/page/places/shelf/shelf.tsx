import { useEffect } from 'preact/hooks';
import { numberWordFirst } from '../../../../units/numberWords.ts';
import { Frame } from '../../parts/frame.tsx';
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
      <NotKnownHere />
      <TrialList />
      <AllCables />
      <StartTrial open={shelf.value.state === 'ready' && shelf.value.trials.length === 0} />
      <SixFields />
      <BringIn />
      <AddPhone />
    </Frame>
  );
}

/** The place's sentence: what stands here and what to do with it. */
function sentence(): string {
  const now = shelf.value;
  if (now.state === 'loading') return 'Looking at the shelf.';
  if (now.state === 'failed') return 'The shelf cannot be read just now.';
  if (now.trials.length === 0)
    return 'The shelf is empty. Start a trial, ask about one cable, or bring your readings in.';
  const standing = now.trials.filter(({ putAway }) => putAway === undefined).length;
  if (standing === 0)
    return 'All trials are put away. Take one up again, start another, ask about a single cable, or bring readings in.';
  if (standing === 1)
    return 'One trial stands on the shelf. Open it, start another, ask about a single cable, or bring readings in.';
  return `${numberWordFirst(standing)} trials stand on the shelf. Open one, start another, ask about a single cable, or bring readings in.`;
}
