import { NO_CONTACT_DISTANCE, NO_RESISTANCE, NOT_WEIGHED } from './cable/missing.ts';
import type { CableFindings } from './schema.ts';

type Piece = Pick<CableFindings, 'role' | 'missing'>;

/** What a control piece still lacks before it says anything of the tools; null where it lacks nothing. */
function lackOf({ missing }: Piece): string | null {
  const lacks = (text: string) => missing.includes(text);
  if (lacks(NO_CONTACT_DISTANCE))
    return `is ohmed, but the distance between the voltage contacts is missing${lacks(NOT_WEIGHED) ? ', and it is not weighed yet' : ''}`;
  if (lacks(NOT_WEIGHED) && lacks(NO_RESISTANCE)) return 'is neither weighed nor ohmed yet';
  if (lacks(NOT_WEIGHED)) return 'is not weighed yet';
  return lacks(NO_RESISTANCE) ? 'is not ohmed yet' : null;
}

/**
 * Why a trial's control piece says nothing of the tools yet, as a sentence: what is still to be read on it. Null where the
 * trial has no control piece, or where one says something already.
 */
export function controlGap(cables: readonly Piece[]): string | null {
  const pieces = cables.filter(({ role }) => role === 'control');
  const lacks = pieces.map(lackOf);
  if (lacks.length === 0 || lacks.includes(null)) return null;
  const which = pieces.length === 1 ? 'The control piece' : 'The first control piece';
  return `${which} ${lacks[0]}, so it does not show yet whether scale, rule, meter and thermometer agree.`;
}
