import { andList } from '../../../../report/words/andList.ts';
import { keepAsTrial, keeping, keepTrouble, keptAs } from '../../store/keepCable.ts';
import { addressOf } from '../../store/routeOf.ts';
import { troubles } from '../../store/sixFields.ts';
import { FIELD_WORDS } from './fieldWords.ts';

/** The way from six fields to a trial: once for what stands in them, and not while one of them is in trouble. */
export function KeepCable() {
  const kept = keptAs.value;
  if (kept !== null) {
    return (
      <p class="kept-as">
        Kept as <a href={addressOf({ place: 'inside', trial: kept.trial, cable: null })}>{kept.title}</a>. Change a
        field, and it can be kept as another.
      </p>
    );
  }
  const inTrouble = FIELD_WORDS.filter(({ name }) => troubles.value[name] !== undefined);
  const refused = inTrouble.length > 0;
  return (
    <>
      <div class="buttons">
        <button
          type="button"
          class="button"
          disabled={refused || keeping.value}
          aria-describedby={refused ? 'keep-refused' : undefined}
          onClick={() => void keepAsTrial()}
        >
          Keep as the start of a trial
        </button>
      </div>
      {refused && (
        <p class="note" id="keep-refused">
          It can be kept once {andList(inTrouble.map(({ label }) => `“${label}”`))}{' '}
          {inTrouble.length === 1 ? 'is' : 'are'} mended or emptied.
        </p>
      )}
      {keepTrouble.value !== '' && <p role="alert">{keepTrouble.value}</p>}
    </>
  );
}
