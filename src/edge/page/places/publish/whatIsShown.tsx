import { useEffect, useId, useState } from 'preact/hooks';
import { PART_PLACES } from '../../../../journal/kinds/seal.ts';
import { LONGEST_PART_NAME } from '../../../../journal/partName.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { Trouble } from '../../parts/trouble.tsx';
import { readsOnly } from '../../store/devices.ts';
import { choosePlace, lookAtPart, subject } from '../../store/publish/publishing.ts';
import { nextPartName, sealPart } from '../../store/publish/sealing.ts';
import { PLACE_NAMES } from './placeWords.ts';
import { useSaid } from './useSaid.ts';

interface WhatIsShownProps {
  trial: Trial;
}

/** What everything below is of: a sealed part, or a draft of chosen places, which can be sealed. */
export function WhatIsShown({ trial }: WhatIsShownProps) {
  const id = useId();
  const { part } = subject.value;
  const last = trial.parts.at(-1)?.part ?? null;
  useEffect(() => {
    if (readsOnly.value && part === null && last !== null) lookAtPart(last);
  }, [readsOnly.value, part, last]);
  return (
    <section class="what-is-shown" aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>What is shown below</h2>
      {trial.parts.length > 0 && (
        <div class="edit">
          <label for={id}>Part</label>
          <select id={id} value={part ?? ''} onChange={(event) => lookAtPart(event.currentTarget.value || null)}>
            {!readsOnly.value && <option value="">A draft, not sealed</option>}
            {trial.parts.map((each) => (
              <option key={each.part} value={each.part}>
                {`Part ${each.part}${each.title === '' ? '' : `: ${each.title}`}`}
              </option>
            ))}
          </select>
        </div>
      )}
      {part === null && !readsOnly.value && <Draft trial={trial} />}
    </section>
  );
}

function Draft({ trial }: WhatIsShownProps) {
  const { places } = subject.value;
  return (
    <>
      <fieldset class="part-places">
        <legend>Places in it</legend>
        {PART_PLACES.map((place) => (
          <div class="tick" key={place}>
            <input
              type="checkbox"
              id={`part-${place}`}
              checked={places.includes(place)}
              onChange={(event) => choosePlace(place, event.currentTarget.checked)}
            />
            <label for={`part-${place}`}>{PLACE_NAMES[place]}</label>
          </div>
        ))}
      </fieldset>
      {trial.blinding.blind ? (
        <p class="note">Names are hidden, so all below goes by codes. Show the names before a part is sealed.</p>
      ) : (
        <Seal trial={trial} />
      )}
    </>
  );
}

function Seal({ trial }: WhatIsShownProps) {
  const id = useId();
  const next = nextPartName(trial.parts);
  const [part, setPart] = useState(next);
  const [title, setTitle] = useState('');
  const [hidden, setHidden] = useState(false);
  const [said, setSaid] = useSaid();
  const [trouble, setTrouble] = useState('');
  useEffect(() => setPart(next), [next]);
  const seal = async (event: SubmitEvent) => {
    event.preventDefault();
    setSaid('Sealing …');
    setTrouble('');
    const stands = await sealPart(trial.trial, { part, title, places: subject.peek().places, hidden });
    setSaid(
      stands === null ? `Part ${part.trim()} is sealed. What it holds stays as it is, whatever is said later.` : '',
    );
    setTrouble(stands ?? '');
    if (stands === null) setTitle('');
  };
  return (
    <form class="seal" onSubmit={(event) => void seal(event)}>
      <div class="edit part-name">
        <label for={`${id}-part`}>Seal it as part</label>
        <input
          id={`${id}-part`}
          value={part}
          maxLength={LONGEST_PART_NAME}
          onInput={(event) => setPart(event.currentTarget.value)}
        />
      </div>
      <div class="edit">
        <label for={`${id}-title`}>Title as readers see it</label>
        <input
          id={`${id}-title`}
          value={title}
          maxLength={200}
          autocomplete="off"
          onInput={(event) => setTitle(event.currentTarget.value)}
        />
      </div>
      <div class="tick">
        <input
          type="checkbox"
          id={`${id}-hidden`}
          checked={hidden}
          onChange={(event) => setHidden(event.currentTarget.checked)}
        />
        <label for={`${id}-hidden`}>Keep it from readers for now</label>
      </div>
      <div class="buttons">
        <button type="submit" class="button main" disabled={subject.value.places.length === 0}>
          Seal this part
        </button>
      </div>
      <Trouble>{trouble}</Trouble>
      <p class="note" role="status">
        {said}
      </p>
    </form>
  );
}
