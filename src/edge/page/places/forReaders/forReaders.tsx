import { useEffect } from 'preact/hooks';
import type { PartPlace } from '../../../../journal/kinds/seal.ts';
import { Frame } from '../../parts/frame.tsx';
import { NothingToSay } from '../../parts/nothingToSay.tsx';
import { trialPlaces } from '../../parts/trialPlaces.ts';
import { folded, held, openJournal } from '../../store/journal/journal.ts';
import { readerSees } from '../../store/readerSees.ts';
import { addressOf, type Route } from '../../store/routeOf.ts';
import { Fetched } from '../fetched.tsx';
import { PLACE_NAMES } from '../publish/placeWords.ts';

/**
 * Stands before a place on a device that only reads: shows it where a sealed part holds it, and otherwise says so. What is not
 * published is not even computed, since the place is not opened.
 */
export function ForReaders(here: Route) {
  const trial = 'trial' in here ? here.trial : '';
  useEffect(() => {
    void openJournal(trial);
  }, [trial]);
  const now = folded.value?.trial === trial ? folded.value : null;
  const published = [...new Set(now?.parts.flatMap(({ places }) => places))];
  const sees = readerSees(here, published);
  // Until the journal is there, nobody knows what was published.
  const known = now !== null || sees !== 'unpublished';
  if (known && sees === 'place') return <Fetched key={here.place} place={here.place as PartPlace} here={here} />;
  const away = held.value?.trial === trial && held.value.asked && held.value.link === 'away';
  const title = now?.title || trial;
  return (
    <Frame
      title={title}
      places={trialPlaces(trial, here.place)}
      trial={{ title, place: now?.place ?? '' }}
      units={false}
      compact
    >
      {known ? (
        <Instead sees={sees} place={here.place} trial={trial} published={published} />
      ) : away ? (
        <NothingToSay trial={trial} sentence={held.value?.sentence ?? ''} />
      ) : (
        <h1>Reading the trial.</h1>
      )}
    </Frame>
  );
}

interface InsteadProps {
  sees: 'records' | 'plan' | 'unpublished';
  place: Route['place'];
  trial: string;
  published: readonly PartPlace[];
}

/** Why nothing stands here, and where something does. */
function Instead({ sees, place, trial, published }: InsteadProps) {
  const [sentence, why] = wordsFor(sees, place);
  return (
    <>
      <h1>{sentence}</h1>
      <p>{why}</p>
      {published.length > 0 && (
        <p>
          Published so far:{' '}
          {published.map((each, at) => (
            <span key={each}>
              {at > 0 && ', '}
              <a href={placeAddress(each, trial)}>{PLACE_NAMES[each]}</a>
            </span>
          ))}
          . Reports and cards of it stand under{' '}
          <a href={addressOf({ place: 'publish', trial, opened: null })}>Publish</a>.
        </p>
      )}
    </>
  );
}

function wordsFor(sees: InsteadProps['sees'], place: Route['place']): [sentence: string, why: string] {
  if (sees === 'plan')
    return ['The plan is not published.', 'This device only reads, and the plan is for those who measure.'];
  if (sees === 'records')
    return [
      'This device only reads.',
      'Readings are recorded at the bench computer, and on phones that were added to record. For that, have the bench computer show a code that records, and add this device anew.',
    ];
  const name = PLACE_NAMES[place as PartPlace] ?? 'This';
  return [
    `${name} is not published.`,
    'No sealed part of this trial holds it yet. This device only reads what was sealed, so nothing is worked out here.',
  ];
}

const placeAddress = (place: PartPlace, trial: string): string =>
  place === 'inside' ? addressOf({ place, trial, cable: null }) : addressOf({ place, trial, opened: null });
