import { seedFromText } from '../journal/textHash.ts';
import { blindCodes } from '../methods/decide/blindCodes.ts';
import { lengthToBuy } from '../methods/decide/lengthToBuy.ts';
import { soakHours } from '../methods/decide/soak.ts';
import { type WorkOrder, type WorkStep, workOrder } from '../methods/decide/workOrder.ts';
import { asideCells } from '../trial/setAside.ts';
import type { Cable, Trial } from '../trial/trial.ts';
import { toCelsius } from '../units/display.ts';
import { readLabel } from './claims/label.ts';
import { type BenchTools, benchTools } from './plan/benchTools.ts';
import { type BendPart, bendParts } from './plan/bendActs.ts';
import { cableNeeded } from './plan/cableNeeded.ts';
import { AREA_WHEN_UNSAID, cutListOf, outerDiameterOf, type PlannedPiece, piecesOf } from './plan/cablePieces.ts';
import { planByChecks, toolsWithoutChecks } from './plan/planByChecks.ts';
import { type LabelPower, planPowers, powersSentence } from './plan/planPowers.ts';
import { missingFromPlan, type PlanWarning, planWarnings } from './plan/planWarnings.ts';
import { costOfLength } from './plan/prices.ts';
import { type ProofShot, proofShotsOf } from './plan/proofShots.ts';
import { type PlanSettings, planSettings } from './plan/settings.ts';
import { STEP_WORDS, stepWishes } from './plan/stepWishes.ts';

/** One cable of the plan. Lengths in m. */
export interface CablePlan {
  cable: string;
  name: string;
  pieces: PlannedPiece[];
  cuts: number;
  /** What the pieces on record take that come from the bought length. */
  recorded: number;
  /** What pieces and saw take, on record or planned, or the least length on which ohms are worth reading. */
  needed: number;
  /** null: not bought yet. */
  bought: number | null;
  /** As the seller cuts it. */
  toBuy: number;
  leftover: number;
  /** How much the bought length falls short of what is needed; 0 when it is enough or not bought yet. */
  shortBy: number;
  /** Of the length to buy; null when no price is known. */
  cost: { amount: number; currency: string } | null;
  /** Round which labels are wrapped, m: claimed or guessed. */
  outerDiameter: number;
  shots: ProofShot[];
}

export interface PlannedStep extends WorkStep {
  words: string;
  /** What it is made of, where it is made of several acts; empty otherwise. */
  parts: BendPart[];
}

export interface TrialPlan {
  settings: PlanSettings;
  cables: CablePlan[];
  steps: PlannedStep[];
  /** Every act of the work in its order. */
  order: WorkOrder['tasks'];
  /** At the bench, all steps together. */
  minutes: number;
  /** Lying in the room first. */
  conditioning: { hours: number; celsius: number | null; text: string };
  /** Money by currency for all lengths to buy. */
  cost: { amount: number; currency: string }[];
  powers: LabelPower[];
  /** Whether the plan shows a shortfall, in one sentence; empty when it was not worked out. */
  sentence: string;
  warnings: PlanWarning[];
  /** What is lacking, as things to do. */
  missing: string[];
}

export interface PlanOptions {
  /** Imagined cables for the power of the plan; 0 leaves it out. */
  draws?: number;
  /** Whether the least work that would do is searched for; it takes a few times longer. */
  withSmallest?: boolean;
  /** Hears how many plans have been tried so far, while the least work is searched for. */
  onTried?: (tried: number) => void;
}

const DRAWS = 600;

/** Seeds rest on the trial's name alone, so that orders and codes stand still while readings come in. */
function seedOf(trial: string, what: string): string {
  return seedFromText(`${what}\n${trial}`);
}

function planCable(
  trial: Trial,
  cable: Cable,
  settings: PlanSettings,
  tools: BenchTools,
  names: Set<string>,
): CablePlan {
  const area = readLabel(cable.label).area ?? AREA_WHEN_UNSAID;
  const list = cutListOf(cable, area, tools, settings);
  const pieces = piecesOf(cable.cable, list, trial.specimens, names);
  for (const { specimen } of pieces) names.add(specimen);
  const { recorded, needed, least, cuts } = cableNeeded(list, pieces, settings.sawLoss);
  const buy = lengthToBuy(needed, settings.seller);
  const bought = cable.boughtLength;
  return {
    cable: cable.cable,
    name: cable.name,
    pieces,
    cuts,
    recorded,
    needed,
    bought,
    toBuy: buy.length,
    leftover: bought === null ? buy.leftover : Math.max(0, bought - needed),
    shortBy: bought === null ? 0 : Math.max(0, least - bought),
    cost: costOfLength(cable, bought ?? buy.length, trial.cables),
    outerDiameter: outerDiameterOf(cable, area),
    shots: proofShotsOf(trial, cable.cable),
  };
}

/** Gives every piece without a code one of its own; the whole lengths too, since ohms are read on them. */
function withCodes(cables: readonly CablePlan[], trial: Trial): CablePlan[] {
  const makers = trial.cables.flatMap((c) => [c.row.maker ?? '', c.row.model ?? '', c.cable]);
  const taken = [...trial.specimens.map((s) => s.code), ...asideCells(trial, 'specimen', 'code')].filter(
    (code) => code !== '',
  );
  const uncoded = cables.flatMap((c) => c.pieces.filter((p) => p.code === ''));
  const codes = blindCodes(uncoded.length, { seed: seedOf(trial.trial, 'codes'), names: makers, taken });
  const codeOf = new Map(uncoded.map((piece, i) => [piece.specimen, codes[i]!]));
  return cables.map((c) => ({
    ...c,
    pieces: c.pieces.map((p) => ({ ...p, code: p.code || codeOf.get(p.specimen)! })),
  }));
}

function conditioningOf(trial: Trial): TrialPlan['conditioning'] {
  const areas = trial.cables.map((c) => readLabel(c.label).area ?? AREA_WHEN_UNSAID);
  const hours = areas.length > 0 ? soakHours(Math.max(...areas)) : 0;
  const celsius = trial.targetTemperature === null ? null : toCelsius(trial.targetTemperature);
  const at = celsius === null ? 'at one temperature' : `at ${Number(celsius.toFixed(1))} °C`;
  const howLong = hours > 4 ? 'overnight' : hours === 1 ? 'for an hour' : `for ${hours} hours`;
  const text = hours === 0 ? '' : `Lay all cables uncoiled in the room, ${at}, ${howLong} before the first reading.`;
  return { hours, celsius, text };
}

function totalCost(cables: readonly CablePlan[]): TrialPlan['cost'] {
  const byCurrency = new Map<string, number>();
  for (const { cost } of cables)
    if (cost) byCurrency.set(cost.currency, (byCurrency.get(cost.currency) ?? 0) + cost.amount);
  return [...byCurrency].map(([currency, amount]) => ({ currency, amount }));
}

/** How long the pieces to take apart would be cut with the tools as they were checked, and as if they had not been. */
function apartLengths(trial: Trial, settings: PlanSettings, tools: BenchTools) {
  const unchecked = toolsWithoutChecks(trial);
  return trial.cables.map((cable) => {
    const area = readLabel(cable.label).area ?? AREA_WHEN_UNSAID;
    const lengthWith = (taken: BenchTools) =>
      cutListOf(cable, area, taken, settings).pieces.find(({ kind }) => kind === 'apart')?.length ?? null;
    return { name: cable.name, checked: lengthWith(tools), unchecked: lengthWith(unchecked) };
  });
}

/**
 * The plan of a trial: what to cut and buy, the work in its order with its minutes, blind codes, whether it would show a
 * shortfall, and what is still lacking. Pieces on record are taken as they are; others are proposed.
 *
 * Pure and deterministic: the same trial gives the same plan, and readings change neither its order nor its codes.
 */
export function planOf(trial: Trial, { draws = DRAWS, withSmallest = false, onTried }: PlanOptions = {}): TrialPlan {
  const settings = planSettings(trial.settings);
  const tools = benchTools(trial);
  // A new piece under the name of one that was put aside would stand aside as well.
  const names = new Set([...trial.specimens.map((s) => s.specimen), ...asideCells(trial, 'specimen', 'specimen')]);
  const cables = withCodes(
    trial.cables.map((cable) => planCable(trial, cable, settings, tools, names)),
    trial,
  );
  const pieces = cables.flatMap((c) => c.pieces);
  const conditioning = conditioningOf(trial);
  const order = workOrder(stepWishes(pieces, settings), {
    working: settings.working,
    seed: seedOf(trial.trial, 'order'),
    soakHours: conditioning.hours,
  });
  const wholeLengths = new Map(trial.cables.map((c, i) => [c.cable, c.boughtLength ?? cables[i]!.toBuy]));
  const powers = planPowers(trial.cables, wholeLengths, settings, tools, {
    draws,
    seed: seedOf(trial.trial, 'power'),
    withSmallest,
    onTried,
  });
  const planned = trial.cables.map((cable, i) => ({
    cable,
    pieces: cables[i]!.pieces,
    shortBy: cables[i]!.shortBy,
    recorded: cables[i]!.recorded,
  }));
  return {
    settings,
    cables,
    steps: order.steps.map((step) => ({
      ...step,
      words: STEP_WORDS[step.step],
      parts: step.step === 'bend' ? bendParts(pieces, settings) : [],
    })),
    order: order.tasks,
    minutes: order.minutes,
    conditioning,
    cost: totalCost(cables),
    powers,
    sentence: powersSentence(powers),
    warnings: [
      ...planByChecks(trial, tools, apartLengths(trial, settings, tools)),
      ...planWarnings(trial, settings, tools, planned),
    ],
    missing: missingFromPlan(trial, settings, tools),
  };
}
