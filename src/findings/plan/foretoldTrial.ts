import { copperPerMetre, ohmsPerMetre } from '../../methods/decide/conductorSize.ts';
import { fold } from '../../trial/fold.ts';
import type { Evidence, Instrument, Reading, Specimen, Trial } from '../../trial/trial.ts';
import { TWENTY_CELSIUS } from '../../units/dimension.ts';

/** Readings that a bench means to take of one cable. */
export interface PlannedWork {
  mass: { tool: Instrument; length: Instrument; over: number; pieces: number; repeats: number } | null;
  /** `over`: distance between the voltage contacts, m. */
  ohms: { tool: Instrument; over: number; repeats: number } | null;
  /** Strands counted once, and so many of them measured. */
  strands: { tool: Instrument; count: number; measured: number } | null;
  /** What a scraped strand is to show; null: nobody looks. */
  seen: string | null;
}

/** How much one reading scatters when it is taken again, standard deviations. Common practice, no source. */
const SCATTER = {
  /** Of a scale or a rule, steps of the display. */
  steps: 0.4,
  /** Of ohms when the clips are set again, relative. */
  clips: 0.002,
  /** Of one strand and the next, relative. */
  strands: 0.005,
};

const CABLE = 'planned';
const NO_ROW = { entry: '', row: {} };
/** A trial with one cable and nothing else, from the fold itself. */
const ONE_CABLE: Trial = fold([
  {
    id: CABLE,
    trial: CABLE,
    kind: 'cable',
    at: '',
    by: '',
    device: '',
    body: { cable: CABLE, claimed_size: 'as planned' },
  },
]);

/** What repeats of a reading scatter by, SI: as the assay will see it, and as it really is for the mean of n. */
function scatterOf(quantity: string, value: number, step: number): { seen: number; own: number } {
  const steps = SCATTER.steps * step;
  if (quantity === 'resistance') return both(Math.hypot(SCATTER.clips * value, steps));
  if (quantity === 'strand_diameter') return { seen: Math.hypot(SCATTER.strands * value, steps), own: steps };
  return both(steps);
}

const both = (sd: number) => ({ seen: sd, own: sd });

/**
 * Real standard deviation of the mean of n readings, SI: their scatter, and the rounding of the display, which averages out
 * only where the scatter carries readings from one step to the next.
 */
export function trueScatterOfMean(quantity: string, value: number, step: number, n: number): number {
  const { own } = scatterOf(quantity, value, step);
  const rounding = step / Math.sqrt(12);
  const isDithered = own > step / 2;
  return Math.hypot(own / Math.sqrt(n), isDithered ? rounding / Math.sqrt(n) : rounding);
}

/** n evenly spread values about a mean with the given standard deviation, rounded to the display. */
function spreadValues(mean: number, sd: number, n: number, step: number): number[] {
  const raw = Array.from({ length: n }, (_, i) => i - (n - 1) / 2);
  const size = Math.sqrt(raw.reduce((sum, r) => sum + r * r, 0) / Math.max(1, n - 1)) || 1;
  return raw.map((r) => {
    const value = mean + (sd * r) / size;
    return step > 0 ? Math.max(step, Math.round(value / step) * step) : value;
  });
}

function readings(
  specimen: string,
  quantity: string,
  mean: number,
  n: number,
  tool: Instrument | null,
  more: Partial<Reading> = {},
): Reading[] {
  const step = tool?.resolution ?? 0;
  const { seen } = scatterOf(quantity, mean, step);
  return spreadValues(mean, seen, n, step).map((value, i) => ({
    ...NO_ROW,
    reading: `${specimen} ${quantity} ${i + 1}`,
    specimen,
    cable: CABLE,
    quantity,
    value,
    step,
    instrument: tool?.instrument ?? null,
    temperature: null,
    atLength: null,
    atLengthStep: 0,
    set: '',
    position: '',
    standing: 'counted',
    replaces: null,
    why: '',
    retagged: [],
    ...more,
  }));
}

const piece = (specimen: string, kind: Specimen['kind'], cutLength: number): Specimen => ({
  ...NO_ROW,
  specimen,
  cable: CABLE,
  code: '',
  cutLength,
  cutLengthStep: 0,
  cutFrom: null,
  kind,
});

function massReadings(area: number, mass: NonNullable<PlannedWork['mass']>): { pieces: Specimen[]; list: Reading[] } {
  const pieces = Array.from({ length: mass.pieces }, (_, i) => piece(`apart ${i + 1}`, 'apart', mass.over));
  const weight = copperPerMetre(area) * mass.over;
  const list = pieces.flatMap(({ specimen }) => [
    ...readings(specimen, 'conductor_length', mass.over, mass.repeats, mass.length),
    ...readings(specimen, 'conductor_mass', weight, mass.repeats, mass.tool),
  ]);
  return { pieces, list };
}

function ohmReadings(area: number, ohms: NonNullable<PlannedWork['ohms']>): Reading[] {
  const value = ohmsPerMetre(area) * ohms.over;
  const more = { atLength: ohms.over, temperature: TWENTY_CELSIUS };
  return readings('whole', 'resistance', value, ohms.repeats, ohms.tool, more);
}

function strandReadings(area: number, strands: NonNullable<PlannedWork['strands']>): Reading[] {
  const diameter = Math.sqrt((4 * area) / (Math.PI * strands.count));
  return [
    ...readings('strands', 'strand_count', strands.count, 1, null),
    ...readings('strands', 'strand_diameter', diameter, strands.measured, strands.tool),
  ];
}

const look = (seen: string): Evidence => ({
  ...NO_ROW,
  cable: CABLE,
  look: 'scraped_strand',
  where: '',
  count: null,
  seenIn: null,
  seen,
});

/**
 * A trial of one copper cable of a given area with every planned reading in it, as it would come out if nothing were off: fed
 * to the same row builders as a real trial, it gives the rows that the assay would get.
 *
 * @param area metal area, m²
 * @throws RangeError when a planned length is not above zero
 */
export function foretoldTrial(area: number, work: PlannedWork): Trial {
  for (const over of [work.mass?.over, work.ohms?.over])
    if (over !== undefined && !(over > 0)) throw new RangeError(`a planned length is above zero, got ${over}`);
  const mass = work.mass ? massReadings(area, work.mass) : { pieces: [], list: [] };
  const ohms = work.ohms ? ohmReadings(area, work.ohms) : [];
  const strands = work.strands ? strandReadings(area, work.strands) : [];
  const used = [work.mass?.tool, work.mass?.length, work.ohms?.tool, work.strands?.tool];
  const tools = new Map(used.flatMap((tool) => (tool ? [[tool.instrument, tool] as const] : [])));
  return {
    ...ONE_CABLE,
    instruments: [...tools.values()],
    specimens: [
      ...mass.pieces,
      ...(work.ohms ? [piece('whole', 'whole', work.ohms.over)] : []),
      ...(work.strands ? [piece('strands', 'apart', work.mass?.over ?? 1)] : []),
    ],
    readings: [...mass.list, ...ohms, ...strands],
    evidence: work.seen === null ? [] : [look(work.seen)],
  };
}
