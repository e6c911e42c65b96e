import type { Cable, Trial } from '../../trial/trial.ts';
import { readLabel } from '../claims/label.ts';
import { type BenchTools, refusedTools } from './benchTools.ts';
import type { PlannedPiece } from './cablePieces.ts';
import { priceFlags } from './prices.ts';
import type { PlanSettings } from './settings.ts';

export interface PlanWarning {
  /** Stable, kebab-case: 'no-ohms-on-whole', 'tool-refused', 'caliper-on-strands', 'price-under-metal', 'too-short', 'more-than-bought' … */
  code: string;
  cable: string | null;
  text: string;
}

/** Whether ohms of the whole length are on record. */
export function hasOhmsOnWhole(trial: Pick<Trial, 'specimens' | 'readings'>, cable: string): boolean {
  const whole = new Set(trial.specimens.filter((s) => s.cable === cable && s.kind === 'whole').map((s) => s.specimen));
  return trial.readings.some(
    (r) =>
      r.standing === 'counted' &&
      whole.has(r.specimen) &&
      (r.quantity === 'resistance' || r.quantity === 'test_voltage'),
  );
}

/**
 * The warning at the first cut of a cable: ohms of its whole length are not on record yet. null when they are, when ohms are
 * not planned, or when no meter that could read them is listed.
 */
export function firstCutWarning(
  trial: Pick<Trial, 'specimens' | 'readings'>,
  cable: Cable,
  settings: Pick<PlanSettings, 'methods'>,
  tools: BenchTools,
): PlanWarning | null {
  if (!settings.methods.has('ohms') || !tools.meter || hasOhmsOnWhole(trial, cable.cable)) return null;
  const pieces = new Map(trial.specimens.filter((s) => s.cable === cable.cable).map((s) => [s.specimen, s.kind]));
  const isCut = trial.readings.some((r) => (pieces.get(r.specimen) ?? 'whole') !== 'whole');
  const text = isCut
    ? `${cable.name}: pieces were read before the ohms of the whole length. Read them on the longest piece that is left: the longer, the surer.`
    : `${cable.name}: no ohms of the whole length are on record. Read them before the first cut; on a short piece the meter sees too little.`;
  return { code: 'no-ohms-on-whole', cable: cable.cable, text };
}

function aboutTools(trial: Trial, settings: PlanSettings, tools: BenchTools): PlanWarning[] {
  const refused = refusedTools(trial).map(({ text }) => ({ code: 'tool-refused', cable: null, text }));
  if (!settings.methods.has('strands') || tools.micrometer || !tools.caliper) return refused;
  return [
    ...refused,
    {
      code: 'caliper-on-strands',
      cable: null,
      text: 'A caliper cannot settle a strand: 0.02 mm on a strand of 0.20 mm is a fifth of its area. Take a micrometer, or measure the width of many turns side by side on a rod.',
    },
  ];
}

function aboutPieces(cable: Cable, pieces: readonly PlannedPiece[]): PlanWarning[] {
  return pieces.flatMap((piece) => {
    const parent = pieces.find((p) => p.specimen === piece.cutFrom);
    const from = parent?.length ?? (parent?.kind === 'whole' ? cable.boughtLength : null);
    if (piece.length === null || from === null || piece.length <= from) return [];
    const text = `${piece.specimen} of ${millimetres(piece.length)} cannot be cut from ${piece.cutFrom}, which has ${millimetres(from)}.`;
    return [{ code: 'longer-than-its-parent', cable: cable.cable, text }];
  });
}

/** Of several cables that lack whole-length ohms before any cut, one warning for all. */
function aboutOhms(trial: Trial, cables: readonly Cable[], settings: PlanSettings, tools: BenchTools): PlanWarning[] {
  const each = cables.flatMap((cable) => firstCutWarning(trial, cable, settings, tools) ?? []);
  if (each.length < 2 || trial.readings.length > 0) return each;
  const names = cables.filter((c) => each.some((w) => w.cable === c.cable)).map((c) => c.name);
  const text = `Before the first cut, read the ohms of every whole length; on a short piece the meter sees too little. Not on record yet: ${names.join(', ')}.`;
  return [{ code: 'no-ohms-on-whole', cable: null, text }];
}

/** What the plan knows of one cable. Lengths in m. */
interface CableToCut {
  cable: Cable;
  pieces: readonly PlannedPiece[];
  shortBy: number;
  /** Pieces on record that come from the bought length. */
  recorded: number;
}

/** Half a millimetre: what a rule leaves open anyway. */
const SAME_LENGTH = 0.0005;

/** Pieces longer together than the cable: a slip where they are on record already, a shortage where they are still to be cut. */
function aboutBought({ cable, shortBy, recorded }: CableToCut): PlanWarning[] {
  if (shortBy <= 0) return [];
  const { boughtLength } = cable;
  const warning = (code: string, text: string) => [{ code, cable: cable.cable, text: `${cable.name}: ${text}` }];
  if (boughtLength !== null && recorded > boughtLength + SAME_LENGTH)
    return warning(
      'more-than-bought',
      `the pieces on record add up to ${millimetres(recorded)}, but ${millimetres(boughtLength)} were bought. Look at the lengths of the pieces, and at the length bought.`,
    );
  return warning(
    'too-short',
    `the pieces need ${millimetres(shortBy)} more than was bought. Plan fewer or shorter pieces, or buy more.`,
  );
}

const millimetres = (length: number): string => `${Math.round(length * 1000)} mm`;

/** Everything that a plan should be told before work begins. */
export function planWarnings(
  trial: Trial,
  settings: PlanSettings,
  tools: BenchTools,
  cables: readonly CableToCut[],
): PlanWarning[] {
  return [
    ...aboutTools(trial, settings, tools),
    ...aboutOhms(
      trial,
      cables.map((c) => c.cable),
      settings,
      tools,
    ),
    ...cables.flatMap(({ cable, pieces }) => aboutPieces(cable, pieces)),
    ...cables.flatMap(aboutBought),
    ...priceFlags(trial.cables, settings.copperPricePerKg),
  ];
}

/** What the plan lacks, as things to do, the most needed first. */
export function missingFromPlan(trial: Trial, settings: PlanSettings, tools: BenchTools): string[] {
  const { methods } = settings;
  const list: string[] = [];
  const names = (cables: readonly Cable[]) => cables.map((c) => c.name).join(', ');
  if (trial.cables.length === 0) list.push('Add the cables, with the size as printed on each label.');
  const noSize = trial.cables.filter((c) => readLabel(c.label).area === null);
  if (noSize.length > 0)
    list.push(`Give a size that can be read, or nothing can be judged by the label: ${names(noSize)}.`);
  if (trial.instruments.length === 0) list.push('List the tools you own: limits of error are filled in as usual.');
  else {
    if (methods.has('weigh') && !tools.scale)
      list.push('List a scale: without one nothing says how much copper there is.');
    if (methods.has('ohms') && !tools.meter)
      list.push(
        'List a four-wire meter, or leave ohms out of the methods: an ordinary multimeter cannot read heavy cable.',
      );
    if (!tools.rule && !tools.tape) list.push('List a rule or tape.');
    if (methods.has('ohms') && tools.meter && !tools.thermometer)
      list.push('List a thermometer: 5 °C on the copper are 2 % of its ohms.');
  }
  if (trial.targetTemperature === null) list.push('Set the temperature that all pieces are brought to.');
  const unbought = trial.cables.filter((c) => c.boughtLength === null);
  if (unbought.length > 0) list.push(`Enter the length bought, once it is here: ${names(unbought)}.`);
  if (trial.cables.length > 1 && !trial.cables.some((c) => c.role === 'control'))
    list.push(
      'Add a control piece: a length of plain solid copper building wire, weighed and ohmed like a cable, checks all tools at once.',
    );
  return list;
}
