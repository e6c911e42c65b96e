import { ESTIMATE_LINE } from '../methods/current/cautions.ts';
import type { RunAnswer, RunState } from '../methods/current/runCheck/answer.ts';
import type { Between, RunQuestion } from '../methods/current/runCheck/question.ts';
import type { RunCheck } from '../methods/current/runCheck/runCheck.ts';
import { ZERO_CELSIUS } from '../units/dimension.ts';
import { answerText, questionText, runSentence } from './runWords.ts';

const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);
const of = ({ value, low, high }: Between, shift = 0) => ({
  value: finite(value + shift),
  interval: [finite(low + shift), finite(high + shift)],
});
const celsius = (b: Between) => of(b, -ZERO_CELSIUS);

function stateJson(s: RunState) {
  return {
    supply_V: s.volts,
    at_load_V: of(s.atLoad),
    lost_V: of(s.lost),
    lost_steady_V: of(s.lostSteady),
    steady_A: of(s.steady),
    peak_A: of(s.peak),
    lost_W: of(s.watts),
    conductor_C: celsius(s.temperature),
    hottest_C: celsius(s.hottest),
    fails: s.fails,
  };
}

const fuseJson = ({ rating, fits, letThrough, text }: RunAnswer['fuse']) => ({
  rating_A: rating,
  fits_A: fits,
  let_through: letThrough,
  text,
});

function answerJson(a: RunAnswer) {
  return {
    cable: a.cable.id,
    name: a.cable.name,
    measured: a.cable.measured,
    area_mm2: a.cable.area * 1e6,
    rating_C: a.cable.rating - ZERO_CELSIUS,
    rating_assumed: a.cable.ratingAssumed,
    resting: stateJson(a.resting),
    charging: a.charging && stateJson(a.charging),
    drop: of(a.drop),
    hottest_C: celsius(a.hottest),
    feeds: a.feeds,
    outcomes: a.outcomes,
    surroundings_too_hot: a.tooHot,
    margin_K: of(a.margin),
    carrying_A: of(a.carrying),
    runs_needed: a.parallel,
    mass_kg: a.mass,
    cost: a.cost,
    fuse: fuseJson(a.fuse),
    fuse_each: a.fuseEach && fuseJson(a.fuseEach),
    text: answerText(a),
  };
}

/** A run check in its machine-readable form; figures with the ends of all doubts together, temperatures in °C. */
export function runJson(q: RunQuestion, check: RunCheck, taken: readonly string[] = []): unknown {
  return {
    question: questionText(q, taken),
    taken,
    problems: check.problems,
    sentence: runSentence(q, check),
    least_size: check.leastSize,
    meets: check.meets,
    cables: check.answers.map(answerJson),
    curves: check.curves.map((c) => ({
      cable: c.id,
      measured: c.measured,
      points: c.points.map((p) => ({
        length_m: p.length,
        drop: finite(p.drop),
        drop_interval: [finite(p.dropLow), finite(p.dropHigh)],
        hottest_C: finite(p.kelvin - ZERO_CELSIUS),
        hottest_high_C: finite(p.kelvinHigh - ZERO_CELSIUS),
      })),
    })),
    estimate: ESTIMATE_LINE,
  };
}
