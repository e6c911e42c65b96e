import { useState } from 'preact/hooks';
import { WAYS_OF_BLINDING } from '../../../../journal/settings.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { codesWereSeen, NewCodes } from '../../parts/newCodes.tsx';
import { goBlind, reveal } from '../../store/bench/putRight.ts';
import { SettingChoice } from './settingChoice.tsx';

const WORDS: Readonly<Record<string, string>> = {
  open: 'not at all: judged openly',
  sleeve: 'a sleeve hides print and colour',
  'eyes covered': 'eyes covered, pieces handed over',
  'other room': 'pieces are read in another room',
};

/** The trial whose names were revealed here since the page was loaded. */
let actedOn = '';

/** Codes instead of names, for those who judge without knowing: folded away, for most work alone and openly. */
export function Blinding({ trial }: { trial: Trial }) {
  const { blind, how, since, revealed } = trial.blinding;
  // Only where it stands at first: an act inside must not fold it away, though the page round it is another afterwards.
  const [opened] = useState(blind || actedOn === trial.trial);
  const [newCodes, setNewCodes] = useState(true);
  return (
    <details class="blinding" open={opened || undefined}>
      <summary>
        <h2>Judge blind</h2>
      </summary>
      <p>
        {blind
          ? `Bench shows codes only${since === null ? '' : ` since ${since.slice(0, 10)}`}${how === '' || how === 'open' ? '' : `; how: ${WORDS[how] ?? how}`}.`
          : revealed
            ? 'The trial was blind once; the names have been shown since.'
            : 'Bench shows names. With codes alone nobody need know which cable is in hand; colour and print still give it away, so say how they are hidden.'}
      </p>
      <SettingChoice
        settings={trial.settings}
        name="blind_how"
        label="How nobody is to know"
        choices={WAYS_OF_BLINDING.map((way) => [way === 'open' ? '' : way, WORDS[way] ?? way] as const)}
      />
      {blind ? (
        <Reveal
          onReveal={() => {
            actedOn = trial.trial;
            void reveal();
          }}
        />
      ) : (
        <>
          <NewCodes trial={trial} on={newCodes} onTurn={setNewCodes} />
          <button
            type="button"
            class="button"
            onClick={() => void goBlind(trial.settings.blind_how ?? 'open', newCodes && codesWereSeen(trial))}
          >
            Go by codes from here on
          </button>
        </>
      )}
    </details>
  );
}

/** Showing the names cannot be taken back, so it takes two steps. */
function Reveal({ onReveal }: { onReveal: () => void }) {
  const [asked, setAsked] = useState(false);
  if (!asked)
    return (
      <button type="button" class="button" onClick={() => setAsked(true)}>
        Reveal the names
      </button>
    );
  return (
    <div class="buttons">
      <button type="button" class="button main" onClick={onReveal}>
        Reveal now, on record
      </button>
      <button type="button" class="button" onClick={() => setAsked(false)}>
        Stay blind
      </button>
    </div>
  );
}
