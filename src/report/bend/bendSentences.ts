import type { Flex, Judged } from '../../findings/shapes/flex.ts';
import { numberWord } from '../../units/numberWords.ts';
import { andList } from '../words/andList.ts';
import { blindWords } from './blindWords.ts';

/** What the place says first: the measured order, the judged one beside it, and whether they agree; empty where there is none. */
export interface BendSentences {
  measured: string;
  judged: string;
  agreement: string;
}

/** The sentences of a trial's bending, each from the bands. */
export function bendSentences({ cables, judged, sentence }: Flex): BendSentences {
  const byHand = judged?.sentence ?? '';
  const measured = byHand !== '' && sentence.endsWith(byHand) ? sentence.slice(0, -byHand.length).trim() : sentence;
  return {
    measured,
    judged: byHand,
    agreement: judged === null ? '' : agreementSentence(cables, judged),
  };
}

/** `60 pairs by 2 judges, judged in sleeves, at 19.6 °C`: what stands wherever judged results do. */
export function howJudged({ pairs, judges, blinded, temperature_range_C: range }: Judged): string {
  const who = judges.length === 1 ? 'one judge' : `${numberWord(judges.length)} judges`;
  const at = range === null ? 'no temperature noted' : rangeWords(range);
  return `${pairs} ${pairs === 1 ? 'pair' : 'pairs'} by ${who}, ${blindWords(blinded)}, ${at}`;
}

/** Temperatures nearer than this are shown as one, K: their mean to a degree is that of each. Ours. */
const AS_ONE = 0.95;

/** `at 20.1 °C`; a span where they lie apart, for nobody measured their mean: `at 19.8 to 22.4 °C`. */
export function rangeWords([low, high]: readonly [number, number]): string {
  return high - low < AS_ONE
    ? `at ${((low + high) / 2).toFixed(1)} °C`
    : `at ${low.toFixed(1)} to ${high.toFixed(1)} °C`;
}

/**
 * Why a cable stands behind one bracket with cables that it differs from: `It shares a band with Cedar though the two differ:
 * Alder lies between and cannot be told from either`. Empty where nothing needs explaining.
 */
export function bandSharing(cable: string, cables: Flex['cables']): string {
  const own = cables.find((c) => c.cable === cable);
  if (!own || own.band === null) return '';
  const mates = cables.filter((c) => c.cable !== cable && c.band === own.band);
  const differ = mates.filter((c) => !own.cannot_be_told_from.includes(c.cable));
  if (differ.length === 0) return '';
  const named = (list: Flex['cables']) => andList(list.map((c) => c.name || c.cable));
  const between = mates.filter((c) => !differ.includes(c));
  const link =
    between.length === 0 ? 'others lie between' : `${named(between)} ${between.length === 1 ? 'lies' : 'lie'} between`;
  return `It shares a bracket with ${named(differ)} though ${differ.length === 1 ? 'the two' : 'they'} differ: ${link}, and a band ends only where every cable above it differs from every cable below.`;
}

/**
 * Where hand and measurement both tell two cables apart, whether they put them in one order. Only bands are compared: what
 * either leaves tied is no disagreement.
 */
function agreementSentence(cables: Flex['cables'], { cables: judged }: Judged): string {
  const both = cables.flatMap((c) => {
    const hand = judged.find((j) => j.cable === c.cable);
    return hand && hand.band !== null && c.band !== null
      ? [{ name: c.name || c.cable, measured: c.band, hand: hand.band }]
      : [];
  });
  const told = both.flatMap((a, i) =>
    both
      .slice(i + 1)
      .filter((b) => a.measured !== b.measured && a.hand !== b.hand)
      .map((b) => ({ a, b, same: a.measured < b.measured === a.hand < b.hand })),
  );
  if (told.length === 0) return '';
  const against = told.filter(({ same }) => !same).map(({ a, b }) => `${a.name} and ${b.name}`);
  const pairs = told.length === 1 ? 'the one pair' : `all ${numberWord(told.length)} pairs`;
  if (against.length === 0) return `Hand and measurement agree on ${pairs} that both tell apart.`;
  const rest = told.length - against.length;
  return `Of ${numberWord(told.length)} ${told.length === 1 ? 'pair' : 'pairs'} that both tell apart, hand and measurement agree on ${rest === 0 ? 'none' : numberWord(rest)}; they differ on ${andList(against)}.`;
}
