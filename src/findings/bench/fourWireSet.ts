import type { Trial } from '../../trial/trial.ts';

/** Currents of a four-wire resistance, each both ways round. Common practice, no source. */
export const FOUR_WIRE_CURRENTS = 3;
export const FOUR_WIRE_PAIRS = 2 * FOUR_WIRE_CURRENTS;

export type FourWireQuantity = 'test_voltage' | 'test_current';
export const isFourWire = (quantity: string): quantity is FourWireQuantity =>
  quantity === 'test_voltage' || quantity === 'test_current';

/** A pair of volts and amps that is read together. */
export interface FourWirePair {
  /** What both readings say as their set. */
  set: string;
  /** Which pair, which current, from 1. */
  pair: number;
  current: number;
  /** Whether the current flows the other way round in it. */
  reversed: boolean;
}

const setOf = (pair: number): string => `current ${pair}`;

/**
 * The pair that the next voltage or current of a piece belongs to: the first that has none yet. Struck readings leave their place
 * open, so that the one measured anew stands beside its partner.
 */
export function fourWirePair(
  trial: Pick<Trial, 'readings'>,
  specimen: string,
  quantity: FourWireQuantity,
): FourWirePair {
  const taken = new Set(
    trial.readings
      .filter((r) => r.standing === 'counted' && r.specimen === specimen && r.quantity === quantity)
      .map((r) => r.set),
  );
  let pair = 1;
  while (taken.has(setOf(pair))) pair++;
  return { set: setOf(pair), pair, current: Math.ceil(pair / 2), reversed: pair % 2 === 0 };
}

/** What is read after one of a pair: its current after the volts, then the next volts; null after the last pair. */
export function fourWirePartner(pair: FourWirePair, quantity: FourWireQuantity): FourWireQuantity | null {
  if (quantity === 'test_voltage') return 'test_current';
  return pair.pair < FOUR_WIRE_PAIRS ? 'test_voltage' : null;
}
