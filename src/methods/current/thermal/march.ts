import type { Rings } from './rings.ts';
import { solveTridiagonal } from './tridiagonal.ts';

/** Heat that the surface gives off at a temperature, W, and its slope, W/K. */
export type SurfaceLoss = (kelvin: number, into: { loss: number; slope: number }) => void;

/** Heat made in the whole: W at the reference and how it grows with the conductor's temperature. */
export interface Source {
  /** N I² R₂₀, W. */
  watts: number;
  /** 1/K, referred to 20 °C. */
  alpha: number;
  /** K */
  reference: number;
}

/** Coefficient of the two-stage method: 1 − 1/√2. */
const STAGE = 1 - Math.SQRT1_2;
/** Rounds of Newton in a stage: the loss is nearly straight over one step. */
const ROUNDS = 2;

/**
 * Temperatures of rings through time, by a two-stage implicit Runge–Kutta method of second order that damps what is stiff:
 * each stage k solves C k = heat made + conducted − lost, at the temperatures that k leads to.
 *
 * Source: R. Alexander, SIAM Journal on Numerical Analysis 14 (1977) 1006. From memory.
 */
export class March {
  /** K, from the middle to the surface. */
  readonly temperatures: Float64Array;
  /** J made and given off so far. */
  made = 0;
  lost = 0;
  private readonly rings: Rings;
  private readonly surfaceLoss: SurfaceLoss;
  private readonly base: Float64Array;
  private readonly stage: Float64Array;
  private readonly lower: Float64Array;
  private readonly diagonal: Float64Array;
  private readonly upper: Float64Array;
  private readonly right: Float64Array;
  private readonly rates: [Float64Array, Float64Array];
  private readonly told = { loss: 0, slope: 0 };

  constructor(rings: Rings, surfaceLoss: SurfaceLoss, start: number) {
    const n = rings.capacity.length;
    const array = () => new Float64Array(n);
    this.rings = rings;
    this.surfaceLoss = surfaceLoss;
    this.temperatures = array().fill(start);
    [this.base, this.stage, this.lower, this.diagonal, this.upper, this.right] = [
      array(),
      array(),
      array(),
      array(),
      array(),
      array(),
    ];
    this.rates = [array(), array()];
  }

  /** Heat held above a temperature, J. */
  heldAbove(kelvin: number): number {
    return this.temperatures.reduce((sum, t, i) => sum + this.rings.capacity[i] * (t - kelvin), 0);
  }

  /** One step of so many seconds. */
  step(seconds: number, source: Source): void {
    const { temperatures, base, rates } = this;
    const n = temperatures.length;
    const h = STAGE * seconds;
    base.set(temperatures);
    this.solveStage(h, source, rates[0], STAGE * seconds);
    for (let i = 0; i < n; i++) base[i] = temperatures[i] + (1 - STAGE) * seconds * rates[0][i];
    this.solveStage(h, source, rates[1], STAGE * seconds, (1 - 2 * STAGE) * seconds);
    temperatures.set(this.stage);
  }

  /** Solves stage = base + h k with C k = what the stage makes, passes on and gives off; writes k. */
  private solveStage(h: number, source: Source, rate: Float64Array, weight: number, firstAgain = 0): void {
    const { rings, base, stage, lower, diagonal, upper, right, told } = this;
    const { capacity, conductance, made } = rings;
    const n = capacity.length;
    stage.set(base);
    let hot = 0;
    let lossAt = 0;
    for (let round = 0; round < ROUNDS; round++) {
      this.surfaceLoss(stage[n - 1], told);
      lossAt = told.loss;
      const surface = stage[n - 1];
      for (let i = 0; i < n; i++) {
        const left = i > 0 ? conductance[i - 1] : 0;
        const out = i < n - 1 ? conductance[i] : 0;
        const growth = source.watts * source.alpha * made[i];
        lower[i] = -left;
        upper[i] = -out;
        diagonal[i] = capacity[i] / h + left + out - growth;
        right[i] = (capacity[i] / h) * base[i] + source.watts * made[i] * (1 - source.alpha * source.reference);
      }
      diagonal[n - 1] += told.slope;
      right[n - 1] += told.slope * surface - told.loss;
      stage.set(solveTridiagonal(lower, diagonal, upper, right));
      lossAt += told.slope * (stage[n - 1] - surface);
    }
    hot = 0;
    for (let i = 0; i < n; i++) {
      rate[i] = (stage[i] - base[i]) / h;
      hot += source.watts * made[i] * (1 + source.alpha * (stage[i] - source.reference));
    }
    this.account(hot, lossAt, weight, firstAgain);
  }

  private first = { made: 0, lost: 0 };

  /** The step's heat by the weights with which the stages enter it: γ and 1 − γ. */
  private account(hot: number, lost: number, weight: number, firstAgain: number): void {
    if (firstAgain === 0) {
      this.first = { made: hot, lost };
      // The first stage enters the step with 1 − γ; γ of it is booked here and the rest with the second.
      this.made += weight * hot;
      this.lost += weight * lost;
      return;
    }
    this.made += weight * hot + firstAgain * this.first.made;
    this.lost += weight * lost + firstAgain * this.first.lost;
  }
}
