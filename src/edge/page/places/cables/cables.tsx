import { useEffect } from 'preact/hooks';
import { numberWordFirst } from '../../../../units/numberWords.ts';
import { Frame } from '../../parts/frame.tsx';
import { indexed, loadLines, shelfLines } from '../../store/across/shelfLines.ts';
import '../../styles/cablesPlace.css';
import { CableList } from './cableList.tsx';
import { FindCables } from './findCables.tsx';
import { LotsAgain } from './lotsAgain.tsx';
import { SideBySide } from './sideBySide.tsx';

const PLACES = [
  { name: 'Shelf', href: '/', here: false, state: '' },
  { name: 'Cables', href: '/cables', here: true, state: '' },
];

/** Every cable of every trial: found, put side by side, followed over time. */
export function Cables() {
  useEffect(() => {
    void loadLines();
  }, []);
  const any = indexed.value.length > 0;
  return (
    <Frame title="Cables" places={PLACES} units>
      <h1>{sentence()}</h1>
      <HowOld />
      {!any && shelfLines.value.state === 'ready' && (
        <p>
          <a class="button main" href="/">
            To the shelf
          </a>
        </p>
      )}
      {any && <FindCables />}
      {any && <CableList />}
      {any && <SideBySide />}
      {any && <LotsAgain />}
    </Frame>
  );
}

function sentence(): string {
  const { state, trials } = shelfLines.value;
  const cables = indexed.value.length;
  const measured = [...trials.values()].filter((each) => each.cables.length > 0).length;
  if (cables === 0)
    return state === 'ready'
      ? 'No cable is on the shelf yet. Start a trial, or bring readings in; its cables stand here then.'
      : 'Looking at the cables of every trial.';
  if (cables === 1) return 'One cable stands on the shelf.';
  const of = measured === 1 ? 'one trial' : `${measured.toLocaleString('en')} trials`;
  const many = cables <= SPELT ? numberWordFirst(cables) : cables.toLocaleString('en');
  return `${many} cables of ${of}. Find one, or choose some and put them side by side.`;
}

/** Numbers up to this one are spelt. */
const SPELT = 12;

/** What is still being asked for, and why what stands here may be old. */
function HowOld() {
  const { state, left, sentence: trouble, damaged, trials } = shelfLines.value;
  return (
    <>
      {state === 'asking' && left > 0 && (
        <p class="working" role="status">
          <progress aria-label="Reading the trials" value={trials.size} max={trials.size + left} /> {left} trials are
          still to be worked out …
        </p>
      )}
      {trouble !== '' && (
        <div class="trouble-sentence" role="alert">
          <p>
            {trouble}
            {trials.size > 0 && ' Below are the cables as this browser was told of them last.'}
          </p>
          <button type="button" class="link" onClick={() => void loadLines()}>
            Ask again
          </button>
        </div>
      )}
      {damaged.length > 0 && (
        <p class="trouble-sentence">
          The disk damaged {damaged.map((title) => `“${title}”`).join(', ')}; the cables are missing here. Open the
          trial to see what to do.
        </p>
      )}
    </>
  );
}
