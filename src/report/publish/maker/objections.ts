import type { CableFindings } from '../../../findings/schema.ts';
import { COPPER_ALPHA } from '../../../methods/metal/constants.ts';
import type { Cable, Reading } from '../../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../../units/dimension.ts';
import { plainText } from '../../figures.ts';
import { boughtText } from '../document/cables.ts';
import type { OfOneCable } from './ofOneCable.ts';

/** What is usually said against a finding, with the answer that this trial's own figures give. */
export interface Objection {
  id: 'tool' | 'tin' | 'cold' | 'lay' | 'stock' | 'sample' | 'paid' | 'cut';
  said: string;
  answer: string;
  /** Section of the report that shows it. */
  section: 'tools' | 'cables' | 'conditions' | 'disclosure';
}

const joined = (...texts: readonly string[]): string => texts.filter((text) => text !== '').join(' ');
const counted = (readings: readonly Reading[]) => readings.filter(({ standing }) => standing === 'counted');
const many = (count: number, one: string, more: string) => `${count} ${count === 1 ? one : more}`;

/**
 * The eight usual objections, each answered from the trial's own figures; an answer says so where there are none.
 *
 * @param toolErrorsAbove how wrong each tool would have to be is listed above them already
 */
export function objectionsTo(of: OfOneCable, { toolErrorsAbove = false } = {}): Objection[] {
  const [cable] = of.findings.cables;
  const [bought] = of.trial.cables;
  if (!cable || !bought) return [];
  const readings = counted(of.trial.readings);
  return [
    { id: 'tool', said: 'Your tools are off.', answer: toolAnswer(of, cable, toolErrorsAbove), section: 'tools' },
    {
      id: 'tin',
      said: 'It is tinned; that is why it reads differently.',
      answer: tinAnswer(of, cable),
      section: 'cables',
    },
    {
      id: 'cold',
      said: 'You measured it too warm or too cold.',
      answer: coldAnswer(cable, readings),
      section: 'conditions',
    },
    { id: 'lay', said: 'You left the lay of the strands out.', answer: layAnswer(cable, readings), section: 'cables' },
    { id: 'stock', said: 'That is old stock.', answer: stockAnswer(bought), section: 'disclosure' },
    { id: 'sample', said: 'That is one sample.', answer: sampleAnswer(of), section: 'disclosure' },
    { id: 'paid', said: 'Somebody paid you.', answer: paidAnswer(of, bought), section: 'disclosure' },
    {
      id: 'cut',
      said: 'You cut it wrong and lost strands.',
      answer: cutAnswer(of, cable, readings),
      section: 'cables',
    },
  ];
}

function toolAnswer({ findings }: OfOneCable, cable: CableFindings, listedAbove: boolean): string {
  const control = findings.control.map(({ sentence }) => sentence).join(' ');
  const listed = listedAbove && cable.tool_errors.length > 0;
  const wrong = listed
    ? 'How wrong each tool would have to be is listed under “What would change the finding”.'
    : cable.tool_errors.map(({ text }) => text).join(' ');
  return joined(
    control || 'No control piece was measured beside it.',
    wrong || 'No outcome of this piece rests on a tool’s error alone: nothing is settled, or too little was measured.',
  );
}

function tinAnswer({ trial }: OfOneCable, cable: CableFindings): string {
  const looks = trial.evidence.length;
  return joined(
    cable.metal_found === null ? 'The metal is not settled.' : `We found ${cable.metal_found}.`,
    tinText(cable),
    looks === 0
      ? 'No look at the strands is on record.'
      : `${many(looks, 'look at the strands is', 'looks at the strands are')} on record.`,
  );
}

/** What its readings leave of tin: over copper, and over aluminium where that is what was found. */
function tinText({ metal }: CableFindings): string {
  const { 'tinned copper': copper, 'tinned clad aluminium': aluminium } = metal;
  if (copper !== undefined)
    return `Tinned copper was among the metals that its readings were held against; its chance came out as ${chance(copper)}.`;
  if (Object.keys(metal).length < 2)
    return 'Tinned copper was not among the metals that its readings were held against.';
  return joined(
    'Its readings were held against tinned copper, too, and leave it no chance.',
    aluminium === undefined
      ? ''
      : `That the aluminium found is tinned has a chance of ${chance(aluminium)}; under tin it is aluminium all the same.`,
  );
}

function chance(share: number): string {
  if (share < 0.001) return 'under 0.1 %';
  return share > 0.999 ? 'over 99.9 %' : `${(100 * share).toFixed(1)} %`;
}

function coldAnswer(cable: CableFindings, readings: readonly Reading[]): string {
  const taken = readings.flatMap(({ quantity, temperature }) =>
    quantity === 'resistance' && temperature !== null ? [temperature - ZERO_CELSIUS] : [],
  );
  const missed = cable.claims.filter((c) => c.of_label && c.outcome === 'falls short' && c.shortfall !== null);
  const short = (missed.find(({ reading }) => reading.includes('resistance')) ?? missed[0])?.shortfall;
  const kelvin = short ? Math.abs(short.value) / COPPER_ALPHA : null;
  return joined(
    taken.length === 0
      ? 'No temperature of the copper is on record; the interval is as wide as that makes it.'
      : `The copper was at ${rangeText(taken)} °C when its ohms were read, and every reading was brought to 20 °C.`,
    `One degree moves the ohms of copper by ${(100 * COPPER_ALPHA).toFixed(3)} %, and its mass not at all.`,
    kelvin === null
      ? ''
      : `To explain by temperature alone what its ohms show, the copper would have to be ${kelvin.toFixed(0)} °C from what was read.`,
  );
}

function rangeText(values: readonly number[]): string {
  const [low, high] = [Math.min(...values), Math.max(...values)].map((value) => value.toFixed(1));
  return low === high ? `${low}` : `${low} to ${high}`;
}

function layAnswer(cable: CableFindings, readings: readonly Reading[]): string {
  const read = readings.some(({ quantity }) => quantity === 'lay_length');
  const lay = cable.lay_factor;
  if (lay === null) return 'No finding of this piece rests on the lay of its strands.';
  const [from, to] = lay.interval.map((end) => end.toFixed(3));
  return joined(
    `Strands are longer than their cable by a factor that lies between ${from} and ${to} here.`,
    read ? 'The lay was measured.' : 'The lay was not measured, so the interval counts every usual one.',
    'Whatever of it is not known is part of the ±.',
  );
}

function stockAnswer(cable: Cable): string {
  const cell = (name: string) => (cable.row[name] ?? '').trim();
  const noted = [
    cell('lot') && `lot ${cell('lot')}`,
    cell('age') && `age ${cell('age')}`,
    cell('bought_on') && `bought on ${cell('bought_on')}`,
    cell('condition') && `condition ${cell('condition')}`,
  ].filter(Boolean);
  return joined(
    noted.length > 0 ? `On record: ${noted.join(', ')}.` : 'Lot, date code and day of purchase are not on record.',
    'The findings speak of this piece. A newer lot is welcome and would be measured in the same way.',
  );
}

function sampleAnswer({ trial }: OfOneCable): string {
  const lots = new Set(trial.cables.map(({ row }) => (row.lot ?? '').trim()).filter(Boolean)).size;
  return joined(
    `We measured ${many(trial.specimens.length, 'piece', 'pieces')} of one purchase${lots > 0 ? ', one lot' : ''}.`,
    'It is one purchase, and we say so: nothing is claimed of any other. Repeats tell how well this piece is known, not how lots differ.',
  );
}

function paidAnswer({ trial }: OfOneCable, cable: Cable): string {
  return joined(
    trial.disclosure || 'Nothing was stated about interests.',
    boughtText(cable) || 'How this piece was come by was not noted.',
  );
}

function cutAnswer({ trial }: OfOneCable, cable: CableFindings, readings: readonly Reading[]): string {
  const whole = new Set(trial.specimens.filter(({ cutFrom }) => cutFrom === null).map(({ specimen }) => specimen));
  const before = readings.find(
    ({ quantity, specimen, atLength }) => quantity === 'resistance' && whole.has(specimen) && atLength,
  );
  const sums = cable.masses.map(({ text }) => text).join(' ');
  return joined(
    before?.atLength
      ? `Its ohms were read over ${plainText(before.atLength, 'm')} of the whole piece that the others were cut from: a strand lost where a short piece was cut is no part of that reading.`
      : 'Its ohms were not read over the whole bought length before the first cut.',
    sums || 'Whether its parts add up to the whole was not weighed.',
  );
}

/** An answer as plain text to paste, with the address of what it rests on where the tester gave one. */
export function pasteable({ said, answer, section }: Objection, address: string): string {
  const link = address.trim() === '' ? '' : `\n${address.trim().replace(/#.*$/, '')}#${section}`;
  return `“${said}”\n${answer}${link}`;
}
