import { useEffect, useId } from 'preact/hooks';
import { JOBS } from '../../../../findings/standing/jobs.ts';
import { CARRYING_JOB, carriedText } from '../../../../report/standing/carriedWords.ts';
import { valueCurve } from '../../../../report/standing/valueCurve.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { capital } from '../../../../units/capital.ts';
import { Picture } from '../../parts/picture.tsx';
import { scaleNow } from '../../store/standing/scaleNow.ts';
import { slidersOf } from '../../store/standing/sliders.ts';
import { tried } from '../../store/standing/standing.ts';
import { chooseOpen, moveShare, openIds, sharesNow, takeJob } from '../../store/standing/trying.ts';
import { openDoor } from './doorOpen.ts';
import { KeepOrGoBack } from './keepOrGoBack.tsx';
import { NowFirst } from './nowFirst.tsx';
import type { Stood } from './order.tsx';

const CURVE = { width: 42, height: 30 };

/** What counts for how much: jobs to begin from, and the weightiest criteria as sliders. */
export function Weights({ stood }: { stood: Stood }) {
  const { decide, trial } = stood;
  const sliders = slidersOf(decide.criteria, sharesNow(stood));
  const chosen = openIds.value?.trial === trial ? openIds.value : null;
  const choose = chosen === null || chosen.anew;
  // The weights of a job, of a ranking, or of the trial arrive a moment after they were asked for; the sliders are chosen then.
  const { wish } = tried.value;
  const settled = (wish !== null && 'numbers' in wish) || stood.stage !== 'moving';
  useEffect(() => {
    if (choose && settled) chooseOpen(stood);
  }, [choose, settled, stood.order]);
  const open = (chosen?.ids ?? []).flatMap((id) => sliders.filter((slider) => slider.id === id));
  const hidden = sliders.filter(({ id, share }) => share > 0 && !open.some((slider) => slider.id === id));
  return (
    <section class="standing-weights">
      <h2>What matters to you</h2>
      <Jobs stood={stood} />
      <ul class="weight-list">
        {open.map((slider) => {
          const criterion = scaleNow(decide.criteria.find(({ id }) => id === slider.members[0])!);
          return (
            <li key={slider.id}>
              <WeightSlider
                name={slider.name}
                share={slider.share}
                onMove={(to) => moveShare(slider.id, slider.members, to)}
                curve={valueCurve(criterion, { ...CURVE, theme: variablesTheme, ends: null, description: '' })}
              />
            </li>
          );
        })}
      </ul>
      <p class="note">
        Shares of 100: when one moves, the others make room.
        {hidden.length > 0 &&
          ` Also counting: ${hidden.map(({ name, share }) => `${name.toLowerCase()} ${share}`).join(', ')}.`}{' '}
        The small curve shows how a figure turns into worth; it is set under{' '}
        <button type="button" class="link" onClick={openDoor}>
          Criteria
        </button>
        .
      </p>
      <KeepOrGoBack stood={stood} />
      <NowFirst stood={stood} />
    </section>
  );
}

interface WeightSliderProps {
  name: string;
  share: number;
  curve: string;
  onMove: (to: number) => void;
}

/** One weight as a rule with a knob: a native range, so that keys, touch and readers aloud work as they do everywhere. */
function WeightSlider({ name, share, curve, onMove }: WeightSliderProps) {
  const id = useId();
  return (
    <div class="weight">
      <label for={id}>{name}</label>
      <Picture svg={curve} silent />
      <input
        id={id}
        type="range"
        min="0"
        max="100"
        step="1"
        value={share}
        style={{ '--share-of-one': share / 100 }}
        aria-valuetext={`${share} of 100`}
        onInput={(event) => onMove(Number(event.currentTarget.value))}
      />
      <output for={id}>{share}</output>
    </div>
  );
}

/** Starting points by the job, and the trial's or one's own weights beside them. */
function Jobs({ stood }: { stood: Stood }) {
  const name = useId();
  const { wish } = tried.value;
  const kept = wish === null ? stood.decide.job : null;
  const job = wish !== null && 'job' in wish ? wish.job : kept;
  const text = JOBS.find((each) => each.job === job)?.text;
  return (
    <>
      <fieldset class="jobs">
        <legend>Begin from a job</legend>
        {JOBS.map((each) => (
          <label key={each.job}>
            <input type="radio" name={name} checked={each.job === job} onChange={() => takeJob(each.job)} />
            <span>{capital(each.job)}</span>
          </label>
        ))}
      </fieldset>
      <p class="note job-text">{text ?? whence(stood)}</p>
      {job === CARRYING_JOB && <p class="note">{noBreak(carriedText(stood.decide.criteria.map(scaleNow)))}</p>}
    </>
  );
}

/** Where the weights come from when no job is chosen. */
function whence(stood: Stood): string {
  const { wish } = tried.value;
  if (wish !== null) return 'ranking' in wish ? 'Weights from your ranking.' : 'Weights of your own.';
  const { weights_from: from } = stood.decide;
  if (from === 'even') return 'Nothing is kept in the trial: the usual four count alike.';
  return from === 'ranking' ? 'The ranking that the trial keeps.' : 'The weights that the trial keeps.';
}
