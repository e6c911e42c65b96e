import { type Consistency, DISAGREE_BELOW } from '../../methods/assay/consistency.ts';
import type { Contradiction } from '../../methods/assay/contradiction.ts';
import type { RowKind } from '../../methods/assay/row.ts';
import type { DoubtfulLength } from '../rows/doubtfulLengths.ts';
import type { CableFindings } from '../schema.ts';

const WORDS: Readonly<Record<RowKind, { quantity: string; name: string; again: string }>> = {
  mass: {
    quantity: 'conductor_mass',
    name: 'The mass',
    again: 'weigh it again, with nothing but bare metal on the scale',
  },
  resistance: {
    quantity: 'resistance',
    name: 'The resistance',
    again: 'take the ohms again with four wires, all strands clamped, and the temperature of the copper',
  },
  strands: {
    quantity: 'strand_count',
    name: 'The strand count with its diameter',
    again: 'count again, bundle by bundle',
  },
  'strand mass': {
    quantity: 'strand_sample_mass',
    name: 'The weight of the strand sample',
    again: 'weigh more strands',
  },
  lay: { quantity: 'lay_length', name: 'The lay length', again: 'measure the lay again' },
  density: {
    quantity: 'submerged_mass',
    name: 'The weight under water',
    again: 'weigh it again under water, without bubbles',
  },
};

function awayBy(off: number | null): string {
  if (off === null) return 'stands apart from what the other readings ask for';
  const p = Math.abs(100 * off);
  const figure = p < 10 ? p.toFixed(1) : Math.round(p).toString();
  return `stands ${figure} % ${off > 0 ? 'above' : 'below'} what the other readings ask for`;
}

/** What to do about a kind of reading that must be taken again, in the imperative. */
export function howToTakeAgain(kind: RowKind): { quantity: string; doThis: string } {
  return { quantity: WORDS[kind].quantity, doThis: WORDS[kind].again };
}

/** The sentence of a gross contradiction that a length explains: the length is named, not the reading that was worked out by it. */
export function lengthSentence({ words, sign }: DoubtfulLength): string {
  return `The readings contradict each other, and one length is doubtful: the ${words} (${sign}). Check that length first. Nothing is judged until they agree.`;
}

/** The sentence of a gross contradiction: which reading, by how much, what it looks like, and that nothing is judged. */
export function contradictionSentence(kind: RowKind, c: Contradiction): string {
  const times = c.factor > 1 ? c.factor : 1 / c.factor;
  const by = `${times >= 10 ? Math.round(times) : times.toFixed(1)} times ${c.factor > 1 ? 'larger' : 'smaller'} than`;
  const slip = c.slip ? ` If one of them is a slip of unit: ${c.slip}.` : '';
  return `The readings contradict each other: ${WORDS[kind].name.toLowerCase()} is ${by} the other readings ask for.${slip} Nothing is judged until they agree.`;
}

/** Agreement of a cable's readings in words, with the reading to take again named. */
export function agreementOf(c: Consistency | null): CableFindings['consistency'] {
  if (!c) return null;
  const { chi2, dof, p } = c;
  if (!c.recheck) {
    const sentence = p < DISAGREE_BELOW ? 'The readings do not agree.' : 'The readings agree with one another.';
    return { chi2, dof, p, recheck: null, sentence };
  }
  const words = WORDS[c.recheck];
  const sentence = `${words.name} ${awayBy(c.off)}: ${words.again}.`;
  return { chi2, dof, p, recheck: words.quantity, sentence };
}
