import { controlHypothesis, type MetalHypothesis } from '../metal/hypotheses.ts';
import {
  type CableFrame,
  frame,
  type SharedIndex,
  type Supposition,
  type System,
  suppositions,
  systemsUnder,
} from './hypothesis.ts';
import { type Foretold, foretellAlone } from './posterior.ts';
import type { AssayCable, SharedInput } from './row.ts';

/** A cable's equations under every supposition: what the readings of the other cables do not change. Read only. */
export interface LaidOut {
  frame: CableFrame;
  suppositions: readonly Supposition[];
  systems: readonly System[];
  /** What each supposition foretells by itself. */
  alone: readonly Foretold[];
}

/** Lays out one cable. @throws RangeError when a row names a shared input that is not listed. */
export function layOutCable(cable: AssayCable, index: SharedIndex, metals: readonly MetalHypothesis[]): LaidOut {
  const f = frame(cable, index);
  const list = suppositions(cable, cable.control ? [controlHypothesis()] : metals);
  const systems = systemsUnder(f, list);
  return { frame: f, suppositions: list, systems, alone: systems.map(foretellAlone) };
}

/**
 * Cables as they were laid out the last time, by everything that they say: from one reading to the next, most cables of a
 * trial stay as they were. For whoever asks about one trial again and again, always with the same metals.
 */
export class LaidOutBefore {
  #cables: ReadonlyMap<string, LaidOut> = new Map();

  /** The cables laid out, as before where they say the same as before. */
  layOut(
    cables: readonly AssayCable[],
    inputs: readonly SharedInput[],
    anew: (cable: AssayCable) => LaidOut,
  ): LaidOut[] {
    const common = JSON.stringify(inputs);
    const now = cables.map((cable): [string, LaidOut] => {
      const says = common + JSON.stringify(cable);
      return [says, this.#cables.get(says) ?? anew(cable)];
    });
    this.#cables = new Map(now);
    return now.map(([, cable]) => cable);
  }
}
