import type { LabelPower } from '../../../../findings/plan/planPowers.ts';
import type { PlanPower } from '../../../../findings/plan/powerOfPlan.ts';
import type { TrialPlan } from '../../../../findings/plan.ts';
import type { Outlook as Shares } from '../../../../methods/decide/planPower.ts';
import { hundredRule } from '../../../../report/hundredRule.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { Picture } from '../../parts/picture.tsx';
import { Trouble } from '../../parts/trouble.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { lookAgain, type Outlook, stopLooking } from '../../store/plan/planned.ts';
import { HowMuchWork } from './howMuchWork.tsx';

/** The place's sentence: whether the plan would show what it is to show. */
export function planSentence(trial: Trial, ahead: Outlook | null): string {
  if (trial.cables.length === 0) return 'Add the cables first: the plan follows from their labels and from your tools.';
  if (ahead === null || (ahead.sentence === '' && ahead.stage === 'computing'))
    return 'Working out what this plan would show.';
  if (ahead.sentence !== '') return ahead.sentence;
  if (ahead.stage === 'failed' || ahead.stage === 'stopped') return 'What this plan would show is not worked out.';
  return 'No label here claims copper in a size that can be read, so there is no shortfall to look for yet.';
}

interface LookAheadProps {
  trial: Trial;
  ahead: Outlook | null;
  plan: TrialPlan | null;
}

/** What would come of a hundred cables, drawn, and the least work that would settle them. */
export function LookAhead({ trial, ahead, plan }: LookAheadProps) {
  if (ahead === null || trial.cables.length === 0) return null;
  return (
    <section class="look-ahead" aria-label="What this plan would show" aria-busy={busy(ahead)}>
      {ahead.powers.map((label) => (
        <OneLabel key={label.size} label={label} alone={ahead.powers.length === 1} />
      ))}
      <Working ahead={ahead} />
      {plan !== null && <HowMuchWork trial={trial} ahead={ahead} plan={plan} />}
      {ahead.powers.length > 0 && <HowWeKnow powers={ahead.powers} />}
    </section>
  );
}

const busy = ({ stage }: Outlook) => stage === 'computing' || stage === 'searching';

function OneLabel({ label, alone }: { label: LabelPower; alone: boolean }) {
  const { power, smallest } = label;
  return (
    <div class="label-power">
      {!alone && (
        <h2>
          Label <bdi dir="auto">{label.size}</bdi>
        </h2>
      )}
      {power === null ? (
        <p>With the tools listed, nothing of the conductor would be read.</p>
      ) : (
        <ul class="hundreds">
          {casesOf(power).map((one) => (
            <Hundred key={one.what} {...one} />
          ))}
        </ul>
      )}
      {smallest !== null && <p class="smallest">{smallest.sentence}</p>}
    </div>
  );
}

interface Case {
  what: string;
  shares: Shares;
  rightly: 'fallsShort' | 'meets';
}

function casesOf({ shortfall, short, honest, generous }: PlanPower): Case[] {
  return [
    { what: `Of 100 cables ${Number((100 * shortfall).toPrecision(2))} % short`, shares: short, rightly: 'fallsShort' },
    { what: 'Of 100 exactly to size', shares: honest, rightly: 'meets' },
    { what: 'Of 100 that hold 3 % more', shares: generous, rightly: 'meets' },
  ];
}

const FIRST_WIDTH = 400;

/** A hundred cables alike on one measuring rule, with the counts in words. */
function Hundred({ what, shares, rightly }: Case) {
  const [place, width] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const right = shares[rightly];
  const wrong = rightly === 'meets' ? shares.fallsShort : shares.meets;
  const rule = hundredRule({ rightly: right, wrongly: wrong }, { width: Math.max(120, width), theme: variablesTheme });
  return (
    <li>
      <p class="what">{what}</p>
      <div ref={place}>
        <Picture silent svg={rule} />
      </div>
      <p class="counts">
        <b>{hundredths(right)}</b> {rightly === 'meets' ? 'meet the label' : 'are shown to fall short'},{' '}
        <b>{restOf(right, wrong)}</b> stay not settled, <b>{hundredths(wrong)}</b>{' '}
        {rightly === 'meets' ? 'are called short' : 'seem to meet it'}
      </p>
    </li>
  );
}

/** What is left of a hundred, so that the three counts make one. */
function restOf(right: number, wrong: number): string {
  return right + wrong > 0.995
    ? hundredths(Math.max(0, 1 - right - wrong))
    : String(100 - Math.round(100 * right) - Math.round(100 * wrong));
}

function hundredths(share: number): string {
  if (share > 0 && share < 0.005) return 'fewer than 1';
  return share < 1 && share > 0.995 ? 'more than 99' : String(Math.round(100 * share));
}

/** How far the working out is; always there, so that nothing below jumps. */
function Working({ ahead }: { ahead: Outlook }) {
  if (ahead.stage === 'failed') return <Trouble>{ahead.trouble}</Trouble>;
  if (ahead.stage === 'stopped')
    return (
      <p class="working">
        Stopped before the least work was found.
        <button type="button" class="link" onClick={lookAgain}>
          Go on
        </button>
      </p>
    );
  if (!busy(ahead)) return null;
  const words = ahead.stage === 'computing' ? 'Reading imagined cables as planned.' : 'Looking for the least work.';
  return (
    <p class="working" role="status">
      <progress aria-label={words} />
      {words}
      {ahead.tried > 0 && ` ${ahead.tried} plans tried.`}
      <button type="button" class="link" onClick={stopLooking}>
        Stop
      </button>
    </p>
  );
}

function HowWeKnow({ powers }: { powers: readonly LabelPower[] }) {
  const draws = powers.find(({ power }) => power !== null)?.power?.short.draws ?? 0;
  return (
    <details class="how">
      <summary>
        <span>How we know</span>
      </summary>
      <p class="note">
        {draws} imagined cables of each size are read as the plan says, with errors drawn from the limits of your tools,
        and judged by the same assay that judges real ones. Seeds come from the trial’s name, so everybody gets these
        figures. The ± is what a typical cable of exactly its size would get, at 95 %.
      </p>
      <ul class="plain">
        {powers.map(({ size, power, smallest }) => (
          <li key={size}>
            <bdi dir="auto">{size}</bdi>: {halfWidthWords(power)}
            {smallest !== null && smallest.tried.length > 0 && (
              <ul class="tried">
                {smallest.tried.map((each) => (
                  <li key={each.words}>
                    {Math.round(100 * each.shows)} in 100, {Math.round(each.minutes)} min: {each.words}
                  </li>
                ))}
              </ul>
            )}
          </li>
        ))}
      </ul>
    </details>
  );
}

function halfWidthWords(power: PlanPower | null): string {
  const half = power?.honest.halfWidth ?? null;
  return half === null ? 'no area would be found.' : `area to about ±${(100 * half).toPrecision(2)} %.`;
}
