import { useState } from 'preact/hooks';
import { knownSights } from '../../../../../methods/metal/eye.ts';
import { capital } from '../../../../../units/capital.ts';
import { Trouble } from '../../../parts/trouble.tsx';
import type { Sight } from '../../../store/bench/looks.ts';
import { useKeep } from './useKeep.ts';

const SEEN = knownSights().filter(({ look }) => look === 'scraped_strand');
const PLACES = ['outer', 'middle', 'centre'] as const;
type Place = (typeof PLACES)[number];
type Marks = Partial<Record<Place, string>>;

/** A strand from the outside, the middle and the centre of the bundle, each with a key for what it shows. */
export function Strands() {
  const [marks, setMarks] = useState<Marks>({});
  const [counted, setCounted] = useState({ showed: '', looked: '', seen: '' });
  const [keep, trouble, say] = useKeep();
  const submit = (event: Event) => {
    event.preventDefault();
    const count = countOf(counted);
    if (count === null)
      return say('Found a count that cannot be; expected whole numbers, as many looked at as showed it.');
    const sights = [...sightsOf(marks), ...count];
    if (sights.length === 0) return say('Found nothing chosen; choose what the strands show.');
    keep(sights);
  };
  return (
    <form onSubmit={submit}>
      <p class="note">
        Scrape each bright with a blade, away from the hand that holds it: copper is red all through, tin lies white
        over red, and white under the copper is another metal.
      </p>
      {PLACES.map((place) => (
        <Keys
          key={place}
          legend={`${capital(place)} strand`}
          name={place}
          value={marks[place] ?? ''}
          onChoose={(seen) => setMarks({ ...marks, [place]: seen })}
        />
      ))}
      <details class="count-strands">
        <summary>Or count how many of a bundle show it</summary>
        <div class="counts">
          <Count
            label="So many showed it"
            value={counted.showed}
            onType={(showed) => setCounted({ ...counted, showed })}
          />
          <Count
            label="So many looked at"
            value={counted.looked}
            onType={(looked) => setCounted({ ...counted, looked })}
          />
        </div>
        <Keys
          legend="What they showed"
          name="counted"
          value={counted.seen}
          onChoose={(seen) => setCounted({ ...counted, seen })}
        />
      </details>
      <Trouble>{trouble}</Trouble>
      <div class="buttons">
        <button type="submit" class="button main">
          Keep what was seen
        </button>
      </div>
    </form>
  );
}

interface KeysProps {
  legend: string;
  name: string;
  value: string;
  onChoose: (seen: string) => void;
}

function Keys({ legend, name, value, onChoose }: KeysProps) {
  return (
    <fieldset class="look-keys">
      <legend>{legend}</legend>
      {SEEN.map(({ seen }) => (
        <label key={seen}>
          <input type="radio" name={`look-${name}`} checked={value === seen} onChange={() => onChoose(seen)} />
          <span>{seen}</span>
        </label>
      ))}
    </fieldset>
  );
}

function Count({ label, value, onType }: { label: string; value: string; onType: (text: string) => void }) {
  return (
    <label>
      <span>{label}</span>
      <input
        type="text"
        inputMode="numeric"
        autocomplete="off"
        value={value}
        onInput={(event) => onType(event.currentTarget.value)}
      />
    </label>
  );
}

/** Strands that show the same are one row: one person looking at strands of one piece repeats their own habit. */
function sightsOf(marks: Marks): Sight[] {
  const looked = PLACES.filter((place) => marks[place] !== undefined);
  const seen = [...new Set(looked.map((place) => marks[place]!))];
  return seen.map((what) => {
    const places = looked.filter((place) => marks[place] === what);
    return { seen: what, where: places.join(', '), count: ofAll(places.length, looked.length) };
  });
}

const ofAll = (showed: number, looked: number) => (showed === looked ? String(looked) : `${showed} of ${looked}`);

/** What was counted, as a row; none when nothing was, null when the numbers cannot be. */
function countOf({ showed, looked, seen }: { showed: string; looked: string; seen: string }): Sight[] | null {
  if (showed.trim() === '' && looked.trim() === '' && seen === '') return [];
  const [of, all] = [showed, looked].map((text) => (/^\d{1,4}$/.test(text.trim()) ? Number(text) : Number.NaN));
  if (!(of! >= 0 && all! >= 1 && of! <= all!) || seen === '') return null;
  return [{ seen, where: '', count: of === all ? String(all) : `${of} of ${all}` }];
}
