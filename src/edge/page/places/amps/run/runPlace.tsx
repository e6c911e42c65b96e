import { cautionsFor, ESTIMATE_LINE } from '../../../../../methods/current/cautions.ts';
import { questionText, runSentence } from '../../../../../report/runWords.ts';
import { noBreak } from '../../../../../report/words/noBreak.ts';
import { ZERO_CELSIUS } from '../../../../../units/dimension.ts';
import { ampsData } from '../../../store/amps/ampsData.ts';
import { ampsRoute } from '../../../store/amps/openInAmps.ts';
import { asUnderstood, looked, runTrial } from '../../../store/amps/running.ts';
import { takenFrom } from '../../../store/amps/runQuestion.ts';
import { assay } from '../../../store/assay.ts';
import { phone } from '../../../store/media.ts';
import { addressOf } from '../../../store/routeOf.ts';
import { RunForm } from './runForm.tsx';
import { RunResults } from './runResults.tsx';

type Missing = { cable: string; name: string; text: string };
const NONE: readonly Missing[] = [];
const named = ({ cable, name, text }: Missing) => ({ name: name || cable, text });

/** A load, a length and what lies between: what every measured cable does there, and the least size that will do. */
export function RunPlace({ trial }: { trial: string }) {
  runTrial.value = trial;
  const { question, check } = looked.value;
  const data = ampsData.value?.trial === trial ? ampsData.value : null;
  const missing = data?.answer?.candidates.missing ?? NONE;
  const refused = check.problems.length > 0;
  // Without the measured cables a sentence would speak of nominal sizes alone.
  const waiting = data === null || (data.answer === null && data.sentence === '');
  const elsewhere = carriedAt(question.surroundings.ambient);
  return (
    <article class="run-check" data-ready={data?.answer ? 'yes' : 'no'}>
      <header class="amps-lead">
        <h1 aria-live="polite">
          {noBreak(
            refused
              ? check.problems[0]!
              : waiting
                ? 'Still working out the measured cables…'
                : runSentence(question, check, missing.map(named)) || 'No cable stands to be looked at.',
          )}
        </h1>
        <p class="buttons">
          <button type="button" class="button" disabled={refused || waiting} onClick={() => print()}>
            Print this run
          </button>
          <a class="button" href={addressOf(ampsRoute(trial, { what: 'nothing' }))}>
            Back to Amps
          </a>
        </p>
        {!refused && <p class="asked">Asked: {noBreak(questionText(question, takenFrom(asUnderstood.value)))}</p>}
        {!refused && elsewhere !== null && (
          <p class="note">
            {noBreak(
              `Amps says what each cable carries at ${elsewhere.toFixed(0)} °C; this run is asked about at ${(question.surroundings.ambient - ZERO_CELSIUS).toFixed(0)} °C, where it carries ${question.surroundings.ambient - ZERO_CELSIUS > elsewhere ? 'less' : 'more'}.`,
            )}
          </p>
        )}
        {!refused && <p class="estimate">{ESTIMATE_LINE}</p>}
        {!refused && phone.value && <p class="note">{noBreak(cautionsFor('run check')[0]!)}</p>}
      </header>
      <div class="run-columns-wide">
        <RunForm />
        <div class="run-results">
          {refused && check.problems.length > 1 && (
            <ul class="run-problems">
              {check.problems.slice(1).map((problem) => (
                <li key={problem}>{noBreak(problem)}</li>
              ))}
            </ul>
          )}
          {data !== null && data.sentence !== '' && <p class="note">{data.sentence}</p>}
          {!refused && !waiting && <RunResults question={question} check={check} missing={missing} />}
        </div>
      </div>
    </article>
  );
}

/** °C at which Amps says what cables carry; null where it is what is asked about, and where it says nothing. */
function carriedAt(kelvin: number): number | null {
  const carrying = assay.value?.findings?.current?.cables.find((c) => c.carrying !== null)?.carrying ?? null;
  if (carrying === null || Math.abs(carrying.ambient_C + ZERO_CELSIUS - kelvin) < 0.5) return null;
  return carrying.ambient_C;
}
