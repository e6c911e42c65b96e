/** Why no number of runs does, or no fuse fits them, in the words of page, print and terminal. */
import type { RunAnswer } from '../methods/current/runCheck/answer.ts';
import type { Nearest } from '../methods/current/runCheck/runsNeeded.ts';
import { ZERO_CELSIUS } from '../units/dimension.ts';

const volts = (x: number): string => `${x.toFixed(2)} V`;

/** `Nor do 6 side by side: at the far end of the doubts they lose 0.61 V where 0.50 V may be lost.`; empty where some do. */
export function inTheWayText({ nearest, cable, parallel, tooHot }: RunAnswer): string {
  if (parallel !== null || tooHot) return '';
  if (nearest === null) return 'More of them side by side are more than is looked at in one bundle.';
  const none = `Nor do up to ${nearest.of} side by side`;
  if (nearest.fails === 'melts') return `${none}: they would melt.`;
  if (nearest.withoutCable)
    return `${none}, nor would any cable: ${beside(nearest)} and the source let too little through.`;
  if (nearest.fails !== null) return `${none}: at the far end of the doubts too little comes through them, too.`;
  const rating = cable.rating;
  const tooMuch = [
    ...(nearest.lost > nearest.mayBeLost ? [lostText(nearest)] : []),
    ...(nearest.hottest > rating
      ? [`come to ${celsius(nearest.hottest)} °C where the rating is ${celsius(rating)} °C, as they warm each other`]
      : []),
  ];
  const far = `at the far end of the doubts ${nearest.runs === nearest.of ? 'they ' : ''}${tooMuch.join(', and ')}`;
  return nearest.runs === nearest.of
    ? `Nor do ${nearest.of} side by side: ${far}.`
    : `${none}; ${nearest.runs} come nearest, but ${far}.`;
}

const celsius = (kelvin: number): string => (kelvin - ZERO_CELSIUS).toFixed(0);
const beside = ({ otherBack }: Nearest): string => (otherBack ? 'the joints and the way back' : 'the joints');

function lostText(nearest: Nearest): string {
  const lost = `lose ${volts(nearest.lost)} where ${volts(nearest.mayBeLost)} may be lost`;
  return nearest.beside > nearest.mayBeLost
    ? `${lost}, ${volts(nearest.beside)} of it by ${beside(nearest)} alone, which more cable does not mend`
    : `${lost}, ${volts(nearest.beside)} of it by ${beside(nearest)}`;
}

/** A size that no number of runs or no fuse fits, and why; empty where both are found, and where nothing may flow at all. */
export function noneFitsText(a: RunAnswer): string {
  if (a.tooHot) return '';
  if (a.parallel === null)
    return `${a.cable.name}: one run ${a.feeds === 'no' ? 'cannot feed this load' : 'does not do'}. ${inTheWayText(a)}`;
  if (a.fuseEach === null || a.fuseEach.rating !== null) return '';
  const does = a.parallel === 1 ? 'one run does' : `${a.parallel} side by side do`;
  return `${a.cable.name}: ${does}, but ${a.fuseEach.text.charAt(0).toLowerCase()}${a.fuseEach.text.slice(1)}`;
}
