import { choleskyInPlace, inverseSymmetric, multiply, solveCholesky } from '../../numerics/dense.ts';
import { type MetalHypothesis, metalHypotheses } from '../metal/hypotheses.ts';
import {
  type CableFrame,
  commonInputs,
  indexShared,
  type SharedIndex,
  type Supposition,
  type System,
} from './hypothesis.ts';
import { type LaidOut, type LaidOutBefore, layOutCable } from './laidOut.ts';
import { foretellInto, lnEvidence, type Posterior, posterior, room, type SharedState, shareInto } from './posterior.ts';
import type { AssayCable, SharedInput } from './row.ts';

/** One supposition that still stands, with its share of belief and its answer. */
export interface AssayComponent {
  supposition: Supposition;
  weight: number;
  system: System;
  answer: Posterior;
}

/** One cable's answer: a mixture over metals and faults, given what the other cables say of the instruments. */
export interface CableAssay {
  cable: AssayCable;
  frame: CableFrame;
  components: AssayComponent[];
  /**
   * The most believed named metal with no gross error, however little it is believed: what agreement is judged by. null when
   * nothing is left to judge by.
   */
  sound: AssayComponent | null;
  /** What all other cables say about the shared inputs. */
  others: SharedState;
  /** nb: how far ln A follows each shared input, per standard deviation; averaged over the mixture. */
  leansOn: Float64Array;
  /** What this cable says about the shared inputs, collapsed to one Gaussian; used by the draws. */
  collapsed: Collapsed;
}

/** What figures are taken from: the answer without what the joint solution keeps for its own use. */
export type AnsweredCable = Pick<CableAssay, 'cable' | 'frame' | 'components' | 'others'>;

export interface JointAssay {
  inputs: readonly SharedInput[];
  index: SharedIndex;
  /** What all cables together say about the shared inputs. */
  shared: SharedState;
  cables: CableAssay[];
}

/** A cable's say about b with its metal averaged out: y̅ = S̅ b + noise of covariance C̅. */
export interface Collapsed {
  S: Float64Array;
  /** S̅ᵀ C̅⁻¹, nb × n */
  pull: Float64Array;
  information: Float64Array;
  informationMean: Float64Array;
}

interface Working extends LaidOut {
  weights: Float64Array;
  collapsed: Collapsed | null;
}

/** Belief below which a supposition is dropped from the answer. */
const NEGLIGIBLE = 1e-9;
/** Belief below which a supposition is not weighed again in the next pass. */
const HOPELESS = 1e-30;
/** Passes over the cables end when no belief moves by more than this: then their order shows in no digit that is printed. */
const SETTLED = 1e-4;
/** Only in the second pass has every cable heard of every other. */
const LEAST_SWEEPS = 2;
/** Passes after which what is left of the order is taken as it is. Three leave about 1 % of a width, six a thousandth of that. */
const MOST_SWEEPS = 12;

/** Scales ln weights to weights that sum to 1. */
export function normalisedWeights(lnWeights: ArrayLike<number>): Float64Array {
  let best = -Infinity;
  for (let i = 0; i < lnWeights.length; i++) if (lnWeights[i] > best) best = lnWeights[i];
  const weights = Float64Array.from(lnWeights, (w) => Math.exp(w - best));
  const sum = weights.reduce((a, b) => a + b, 0);
  for (let i = 0; i < weights.length; i++) weights[i] /= sum;
  return weights;
}

function weigh({ frame: { n, nb }, suppositions, systems, alone, weights }: Working, state: SharedState): Float64Array {
  const into = room(n, nb);
  let slopes: Float64Array | null = null;
  const lnWeights = systems.map((system, i) => {
    if (weights[i] < HOPELESS) return -Infinity;
    // Suppositions of one metal stand together and have their slopes in common.
    if (system.S !== slopes) shareInto(into, system, state);
    slopes = system.S;
    foretellInto(into, system, state, alone[i]);
    return suppositions[i].lnPrior + lnEvidence(into);
  });
  return normalisedWeights(lnWeights);
}

/**
 * Collapses the suppositions to one Gaussian statement about the shared inputs: means and covariances of the foretold
 * readings are averaged by weight, and the suppositions' disagreement widens it. It can only understate what is learnt.
 */
function collapse(work: Working, nb: number): Collapsed {
  const { n } = work.frame;
  const mean = new Float64Array(n);
  const second = new Float64Array(n * n);
  const S = new Float64Array(n * nb);
  work.systems.forEach((system, h) => {
    const w = work.weights[h];
    if (w < NEGLIGIBLE) return;
    const { residual, M } = work.alone[h];
    for (let i = 0; i < n; i++) {
      mean[i] += w * residual[i];
      for (let j = 0; j < n; j++) second[i * n + j] += w * (M[i * n + j] + residual[i] * residual[j]);
      for (let k = 0; k < nb; k++) S[i * nb + k] += w * system.S[i * nb + k];
    }
  });
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) second[i * n + j] -= mean[i] * mean[j];
  choleskyInPlace(second, n);
  const pull = new Float64Array(nb * n);
  for (let k = 0; k < nb; k++) {
    for (let i = 0; i < n; i++) pull[k * n + i] = S[i * nb + k];
    solveCholesky(second, n, pull, k * n);
  }
  const information = multiply(pull, S, nb, n, nb);
  const informationMean = multiply(pull, mean, nb, n, 1);
  return { S, pull, information, informationMean };
}

/** State of b from a precision matrix (identity prior included) and its information vector. */
function stateFrom(precision: Float64Array, vector: Float64Array, nb: number): SharedState {
  const cov = inverseSymmetric(precision, nb);
  return { cov, mean: multiply(cov, vector, nb, nb, 1) };
}

function addTo(total: Float64Array, part: Float64Array, sign: 1 | -1): void {
  for (let i = 0; i < total.length; i++) total[i] += sign * part[i];
}

/** "Other" would agree with anything, so agreement is never judged by it. */
function mostBelievedSound<T extends { supposition: Supposition; weight: number }>(all: readonly T[]): T | null {
  return all
    .filter((c) => c.supposition.fault === null && c.supposition.metal.metal !== 'other')
    .reduce<T | null>((best, c) => (best === null || c.weight > best.weight ? c : best), null);
}

function answer(work: Working, others: SharedState, nb: number): CableAssay {
  const all = work.systems.map((system, i) => ({
    supposition: work.suppositions[i],
    weight: work.weights[i],
    system,
  }));
  const kept = all.filter((c) => c.weight > NEGLIGIBLE);
  const sum = kept.reduce((total, c) => total + c.weight, 0);
  const components = kept.map((c) => ({ ...c, weight: c.weight / sum, answer: posterior(c.system, others) }));
  const sound = mostBelievedSound(all);
  const { n } = work.frame;
  const leansOn = new Float64Array(nb);
  for (const { weight, system, answer: a } of components)
    for (let i = 0; i < n; i++) for (let k = 0; k < nb; k++) leansOn[k] -= weight * a.gain[i] * system.S[i * nb + k];
  return {
    cable: work.frame.cable,
    frame: work.frame,
    components,
    sound: sound && { ...sound, answer: posterior(sound.system, others) },
    others,
    leansOn,
    collapsed: work.collapsed as Collapsed,
  };
}

/** Cables that agree about the instruments, each answered when it is asked for. */
export interface SettledCables extends Omit<JointAssay, 'cables'> {
  /** The answer for the cable at that place of the list; worked out anew at each call. */
  answerFor(place: number): CableAssay;
}

/**
 * Brings all cables of a trial into agreement about the instruments: the joint work of {@link jointAssay}, for those who
 * want the answer for some cables only.
 *
 * @param before what was laid out the last time, for whoever asks again and again; holds what was laid out now afterwards.
 *   It saves time and changes no digit
 */
export function settledCables(
  cables: readonly AssayCable[],
  inputs: readonly SharedInput[],
  metals: readonly MetalHypothesis[] = metalHypotheses(),
  before?: LaidOutBefore,
): SettledCables {
  const all = [...inputs, ...commonInputs()];
  const index = indexShared(all);
  const nb = all.length;
  const layOut = (cable: AssayCable) => layOutCable(cable, index, metals);
  const laidOut = before ? before.layOut(cables, all, layOut) : cables.map(layOut);
  const works = laidOut.map((cable): Working => {
    return { ...cable, weights: new Float64Array(cable.suppositions.length).fill(1), collapsed: null };
  });
  const precision = new Float64Array(nb * nb);
  for (let k = 0; k < nb; k++) precision[k * nb + k] = 1;
  const vector = new Float64Array(nb);
  const othersOf: SharedState[] = [];
  let moved = Infinity;
  for (let sweep = 0; sweep < LEAST_SWEEPS || (sweep < MOST_SWEEPS && moved > SETTLED); sweep++) {
    moved = 0;
    works.forEach((work, c) => {
      if (work.collapsed) {
        addTo(precision, work.collapsed.information, -1);
        addTo(vector, work.collapsed.informationMean, -1);
      }
      othersOf[c] = stateFrom(precision, vector, nb);
      const weights = weigh(work, othersOf[c]);
      weights.forEach((w, i) => {
        moved = Math.max(moved, Math.abs(w - work.weights[i]));
      });
      work.weights = weights;
      work.collapsed = collapse(work, nb);
      addTo(precision, work.collapsed.information, 1);
      addTo(vector, work.collapsed.informationMean, 1);
    });
  }
  return {
    inputs: all,
    index,
    shared: stateFrom(precision, vector, nb),
    answerFor: (place) => answer(works[place], othersOf[place], nb),
  };
}

/**
 * Assays all cables of a trial at once, in closed form.
 *
 * Each cable is a linear Gaussian problem in (ln A, ln k, ln ρm, ln ρe) for every supposition about its metal and about
 * gross errors; all cables share one set of instrument errors b. Given the suppositions, b and the cables are solved
 * exactly; the weights of the suppositions are found cable by cable with that cable left out of what is known of b.
 *
 * Cost grows with the number of cables, not with its square.
 *
 * @param inputs limits of error of the instruments; constants common to all cables are added here.
 * @throws RangeError when a row names a shared input that is not listed.
 */
export function jointAssay(
  cables: readonly AssayCable[],
  inputs: readonly SharedInput[],
  metals: readonly MetalHypothesis[] = metalHypotheses(),
): JointAssay {
  const { answerFor, ...settled } = settledCables(cables, inputs, metals);
  return { ...settled, cables: cables.map((_, place) => answerFor(place)) };
}
