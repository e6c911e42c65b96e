import { numberWord } from '../../units/numberWords.ts';
import type { Across, AcrossAsked } from './across.ts';
import { IF_NO_ERROR, linkFigures } from './links.ts';
import { pairsWords } from './pairsWords.ts';
import { nameWithin } from './quantities.ts';

/** A share in per cent with two digits: `0.84 %`, `12 %`; nothing below a hundredth of one. */
export function percentWords(share: number): string {
  const percent = 100 * Math.abs(share);
  if (percent < 0.01) return '0 %';
  if (percent >= 100) return `${Math.round(percent)} %`;
  const text = percent.toPrecision(2);
  return `${percent >= 10 ? Math.round(percent) : text} %`;
}

/** `1.9 to 4.0 %`: two shares without their signs, the smaller first. */
export function percentRange(a: number, b: number): string {
  const [low, high] = [Math.abs(a), Math.abs(b)].sort((x, y) => x - y);
  return `${percentWords(low!).replace(' %', '')} to ${percentWords(high!)}`;
}

const quoted = (name: string): string => `“${name}”`;
const figureWords = ({ quantity }: Pick<Across, 'quantity'>): string =>
  quantity.percent ? 'share of the label’s copper' : nameWithin(quantity);
const times = (trials: number): string => `${numberWord(trials)} trials`;

/** A spread above this many per cent is said as more than that: it was hardly measured. */
const HARDLY_MEASURED = 0.5;

/** What stands between the trials, in plain words; the first sentence is the one that counts. */
export function sentencesAcross(
  across: Omit<Across, 'sentences' | 'howWeKnow'>,
  asked: AcrossAsked,
  several: boolean,
): string[] {
  const said: string[] = [];
  const { groups, quantity, without } = across;
  const shown = groups.reduce((sum, { rows }) => sum + rows.length, 0);
  if (shown > 0 && !several)
    said.push('All of these were measured in one trial, so nothing comes between them but their own doubt.');
  else if (shown > 0 && quantity.linkedBy === null)
    said.push('Prices are those of their day; they carry no error of measurement.');
  else if (shown > 0) said.push(...betweenWords(across, asked));
  const ratio = ratioWords(across);
  if (ratio !== '') said.push(ratio);
  const pairs = pairsWords(across);
  if (pairs !== '') said.push(pairs);
  if (without.length > 0)
    said.push(
      `Without ${quantity.id.startsWith('price') ? 'such a price, or in other money' : 'that figure'}: ${without.join(', ')}.`,
    );
  return said;
}

function betweenWords(across: Omit<Across, 'sentences' | 'howWeKnow'>, asked: AcrossAsked): string[] {
  const { groups, between } = across;
  const { link, quantity, shift } = asked;
  const trials = times(groups.length);
  if (link === null)
    return [
      `These figures come from ${trials} with no piece in common, so a difference between two trials contains an error that nobody measured.`,
      'Measure one piece in every trial, and give it one name under Plan: “Known in other trials as”.',
    ];
  if (between === null) {
    const n = linkFigures(link, quantity).length;
    return [
      `These figures come from ${trials}; the ${figureWords(across)} of ${quoted(link.name)} is known from ${n === 0 ? 'none' : 'one'} only, so a difference between two trials contains an error that nobody measured.`,
    ];
  }
  const { spread, interval } = between;
  const upper =
    interval[1] > HARDLY_MEASURED ? `more than ${percentWords(HARDLY_MEASURED)}` : percentWords(interval[1]);
  const first =
    spread > 0
      ? `${quoted(link.name)} was measured in ${times(between.trials)}, which scatter by about ${percentWords(spread)} beyond what its readings explain (one standard deviation; it may be ${percentWords(interval[0]).replace(' %', '')} to ${upper}).`
      : `${quoted(link.name)} was measured in ${times(between.trials)} and agrees within the doubt of its readings; an error between trials of up to ${upper} is not ruled out.`;
  const said = [first];
  said.push(shift ? shiftWords(across, link.name) : 'Every interval here is widened by what is likely of that.');
  if (interval[0] > ONE_PIECE)
    said.push(
      `So large a difference says that ${quoted(link.name)} is hardly one piece in all of them: look at its rows.`,
    );
  if (between.trials <= FEW)
    said.push(
      `${between.trials === 2 ? 'Two trials' : 'Three trials'} say little of it: the same piece in one more trial would narrow the intervals.`,
    );
  return said;
}

/** Trials that surely differ by more than this share did hardly measure one piece. Common practice, no source. */
const ONE_PIECE = 0.05;
/** With so many trials or fewer, the spread between them is hardly known. */
const FEW = 3;

function shiftWords({ groups }: Pick<Across, 'groups'>, name: string): string {
  const left = groups.filter(({ rows }) => rows.some(({ way }) => way === 'widened')).map(({ title }) => title);
  const besides =
    left.length === 0 ? '' : ` ${left.join(', ')} did not measure it; what is from there is widened instead.`;
  return `Each trial is shifted by how far ${quoted(name)} read high or low in it. That is right where whatever caused it acts on all cables of the trial alike, which was not measured.${besides}`;
}

function ratioWords({ ratio, between, groups }: Omit<Across, 'sentences' | 'howWeKnow'>): string {
  if (ratio === null) return '';
  const { first, second, value, interval } = ratio;
  const [low, high] = interval;
  const names = first.line.name === second.line.name;
  const nameOf = ({ line }: typeof first) => (names ? `${line.name} (${line.title})` : line.name);
  const gap = low <= 1 && high >= 1;
  const unknown = between === null && groups.length > 1 ? IF_NO_ERROR : '';
  if (gap)
    return `${nameOf(first)} and ${nameOf(second)} cannot be parted: the first lies between ${sideWords(low)} and ${sideWords(high)} the second${unknown}.`;
  return `${nameOf(first)} is ${percentWords(value - 1)} ${value > 1 ? 'above' : 'below'} ${nameOf(second)} (${percentRange(low - 1, high - 1)})${unknown}.`;
}

const sideWords = (ratio: number): string => `${percentWords(ratio - 1)} ${ratio < 1 ? 'below' : 'above'}`;

/** The model and its figures, for whoever asks how this is known. */
export function howWeKnowAcross({ between }: Pick<Across, 'between'>, { link, shift, level }: AcrossAsked): string[] {
  if (between === null || link === null) return [];
  const percent = `${Number((100 * level).toFixed(1))} %`;
  return [
    `Model: the logarithm of the figure of ${quoted(link.name)} in a trial is its true value, plus an error of the trial, plus an error of its readings with the standard uncertainty that the trial found.`,
    `Scatter of ${times(between.trials)}: χ² = ${between.scatter.toFixed(1)} on ${between.dof} ${between.dof === 1 ? 'degree' : 'degrees'} of freedom. Standard deviation between trials after Paule and Mandel: ${percentWords(between.spread)}; ${percent} interval by the scatter’s own distribution.`,
    shift
      ? 'A shifted figure carries the standard uncertainty of its own readings and that of the linking piece in its trial. What both have in common, such as one scale, is counted twice: the interval is rather too wide.'
      : `A widened interval is that of a mixture over ${between.likely.length} equally likely spreads, so that few trials widen more than many.`,
    'What all trials have in common, such as one scale used in each, does not show in a piece that is measured again.',
  ];
}
