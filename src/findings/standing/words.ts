import { bandsOf, listed } from '../flex/words.ts';
import type { CableStanding, CriterionFound, WeightOf } from '../shapes/decide.ts';

const percent = (share: number): string => {
  if (share >= 0.995) return 'more than 99 %';
  return share < 0.005 ? 'less than 1 %' : `${Math.round(100 * share)} %`;
};

type Ordered = Pick<CableStanding, 'name' | 'band' | 'probability_first'>;

/** A chance of the first place from which a cable is named for it. */
const NAMED_FROM = 0.1;

/** `Chance of the first place: A 58 %, B 35 %`: the two likeliest, or the likeliest alone. */
function chancesOfFirst(cables: readonly Ordered[]): string {
  const [first, second] = [...cables].sort((a, b) => b.probability_first - a.probability_first);
  const named = second.probability_first >= NAMED_FROM ? [first, second] : [first];
  return `Chance of the first place: ${named.map((c) => `${c.name} ${percent(c.probability_first)}`).join(', ')}.`;
}

/** The order in words, made from the bands: who comes first by these weights, and who cannot be parted. */
export function orderSentence(cables: readonly Ordered[]): string {
  const [first, ...rest] = bandsOf(cables);
  if (!first) return '';
  if (rest.length === 0) return `By these weights no clean cut parts ${listed(first)}. ${chancesOfFirst(cables)}`;
  const alone = first.length === 1;
  const lead = alone
    ? `By these weights ${first[0]} comes first (chance ${percent(cables[0].probability_first)})`
    : `By these weights ${listed(first)} share the first places, with no clean cut between them`;
  const then = rest.map((band, i) => {
    const last = i === rest.length - 1 ? 'last ' : 'then ';
    return `${last}${listed(band)}${band.length > 1 ? ', not parted' : ''}`;
  });
  const order = `${[lead, ...then].join('; ')}.`;
  return alone ? order : `${order} ${chancesOfFirst(cables)}`;
}

/** Chance of the same first place over other tastes from which it is spoken of as holding. */
const HOLDS = 0.8;

/** What tastes near the stated weights would change. */
export function tasteSentence(cables: readonly CableStanding[]): string {
  const [leader] = cables;
  if (!leader) return '';
  const held = leader.acceptability[0];
  const next = [...cables].slice(1).sort((a, b) => b.acceptability[0] - a.acceptability[0])[0];
  const tastes = 'over tastes near these weights';
  if (held >= HOLDS)
    return `${leader.name} stays first in ${percent(held)} of cases ${tastes}, measurement doubt included.`;
  if (!next) return '';
  return `It leans on the weights: ${tastes}, ${leader.name} is first in ${percent(held)} of cases and ${next.name} in ${percent(next.acceptability[0])}.`;
}

const points = (weight: number) => `${Math.round(100 * weight)} %`;

/** Weights that move by less than this are not named: a rounded per cent. */
const MOVED = 0.005;

/** What would have to matter more for a cable to come first. */
export function toComeFirstText(
  name: string,
  moved: readonly WeightOf[] | null,
  criteria: readonly CriterionFound[],
): string {
  if (moved === null) return `No weights of these criteria bring ${name} to the first place.`;
  const changes = criteria.flatMap((c) => {
    const to = moved.find((m) => m.criterion === c.id)?.weight ?? 0;
    return Math.abs(to - c.weight) > MOVED ? [{ c, to }] : [];
  });
  const more = changes.filter(({ c, to }) => to > c.weight).sort((a, b) => b.to - b.c.weight - (a.to - a.c.weight));
  if (more.length === 0) return `${name} all but shares the first place.`;
  const less = changes.filter(({ c, to }) => to < c.weight);
  const say = ({ c, to }: (typeof changes)[number], counts = '') =>
    `${c.name.toLowerCase().split(',')[0]}${counts} ${points(to)} instead of ${points(c.weight)}`;
  const [first, ...others] = more;
  const gains = [say(first, ' counted'), ...others.map((m) => say(m))].join(', ');
  const losses = less.length > 0 ? ` (${listed(less.map((l) => say(l)))})` : '';
  return `${name} would come first if ${gains}${losses}.`;
}

/** A weight that stands this much higher where a cable comes first is worth naming. */
const LIFTED = 0.03;

/** What the weights are like at which a cable comes first. */
export function centralText(
  name: string,
  central: readonly WeightOf[] | null,
  firsts: number,
  criteria: readonly CriterionFound[],
): string {
  if (central === null)
    return firsts < 1
      ? `${name} never comes first within these weights.`
      : `${name} comes first too seldom within these weights to say what brings it there.`;
  const lifted = central
    .map(({ criterion, weight }) => ({ c: criteria.find(({ id }) => id === criterion)!, weight }))
    .sort((a, b) => b.weight - b.c.weight - (a.weight - a.c.weight))[0];
  const rise = lifted.weight - lifted.c.weight;
  if (rise < LIFTED) return `${name} comes first at about these weights.`;
  return `${name} comes first most of all for those to whom ${lifted.c.name.toLowerCase().split(',')[0]} counts about ${points(lifted.weight)}.`;
}
