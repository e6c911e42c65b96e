import type { QuantityName } from '../../journal/quantities.ts';
import type { Step } from '../../methods/decide/workMinutes.ts';
import type { Trial } from '../../trial/trial.ts';
import type { BenchTools } from '../plan/benchTools.ts';
import { COILS, droopsWanted, PUSHES } from '../plan/bendActs.ts';
import { STRANDS_MEASURED } from '../plan/plannedWork.ts';
import type { PlanSettings } from '../plan/settings.ts';
import { FOUR_WIRE_PAIRS, isFourWire } from './fourWireSet.ts';

/** What is read in one go on one piece: quantities of one set share a position of the piece. */
export interface WantedGroup {
  step: Step;
  /** In the order in which they are read. */
  quantities: readonly QuantityName[];
  /** Repeats of each. */
  wanted: number;
  /** Pieces that it is read on: all of the step, or the first of each cable. */
  onAll: boolean;
}

/** A length is taken on two sides of a piece: that shows a cut that is not square. Common practice, no source. */
const SIDES = 2;
/** Readings of the wall round a cut face. IEC 60811-201, from memory. */
const WALLS = 6;
/** An outer diameter is read crosswise. Common practice, no source. */
const CROSSWISE = 2;

/** Every group of readings that the settings want, in the order of the work. */
export function wantedGroups(settings: PlanSettings): WantedGroup[] {
  const { methods, bendWishes, fourWire, repeats } = settings;
  const group = (step: Step, wanted: number, onAll: boolean, ...quantities: QuantityName[]): WantedGroup => ({
    step,
    quantities,
    wanted,
    onAll,
  });
  const bends = methods.has('bend') || bendWishes.size > 0;
  return [
    ...(methods.has('ohms') ? [group('ohms', repeats, true, 'resistance')] : []),
    ...(fourWire ? [group('ohms', FOUR_WIRE_PAIRS, true, 'test_voltage', 'test_current')] : []),
    // A stiffness by droop takes the weight per length, a coil the thickness: asked of the piece to bend where nothing else asks.
    ...(methods.has('bend') && !methods.has('weigh')
      ? [group('bend', 1, true, 'specimen_length'), group('bend', 1, true, 'specimen_mass')]
      : []),
    ...(bends && !methods.has('wall') ? [group('bend', CROSSWISE, true, 'outer_diameter')] : []),
    ...(methods.has('bend') ? [group('bend', droopsWanted(settings), true, 'overhang', 'tip_drop')] : []),
    ...(bendWishes.has('push')
      ? [group('bend', 1, true, 'push_span'), group('bend', PUSHES, true, 'push_deflection', 'push_force')]
      : []),
    ...(bendWishes.has('coil') ? [group('bend', COILS, true, 'coil_diameter')] : []),
    ...(bendWishes.has('spring') ? [group('bend', 1, true, 'spring_back')] : []),
    ...(methods.has('weigh')
      ? [
          group('weigh', 1, true, 'specimen_mass'),
          group('weigh', SIDES, true, 'conductor_length'),
          group('weigh', repeats, true, 'conductor_mass'),
          group('weigh', 1, true, 'jacket_mass'),
        ]
      : []),
    ...(methods.has('strands')
      ? [group('strands', 1, false, 'strand_count'), group('strands', STRANDS_MEASURED, false, 'strand_diameter')]
      : []),
    ...(methods.has('wall')
      ? [
          group('wall', CROSSWISE, false, 'outer_diameter'),
          group('wall', WALLS, false, 'wall_thickness'),
          // Half of what the diameters differ by is the wall a second time, and shows jaws that squeezed it.
          group('wall', CROSSWISE, false, 'conductor_diameter'),
        ]
      : []),
  ];
}

/** Kind of piece that each step is read on. */
export const PIECES_OF_STEP: Partial<Record<Step, string>> = {
  ohms: 'whole',
  bend: 'bend',
  weigh: 'apart',
  strands: 'apart',
  wall: 'apart',
};

const MASSES: ReadonlySet<string> = new Set(['specimen_mass', 'conductor_mass', 'jacket_mass']);
const BY_CALIPER: ReadonlySet<string> = new Set(['outer_diameter', 'wall_thickness', 'conductor_diameter']);
/** Counted or told by eye: no tool of the list reads them. */
const BY_EYE: ReadonlySet<string> = new Set(['strand_count', 'coil_turns', 'spring_back', 'chord_angle']);

/** The listed tool to read a quantity with; null when none that is fit for it is listed, or it is counted by eye. */
export function suggestedTool(quantity: string, tools: BenchTools): string | null {
  if (MASSES.has(quantity)) return tools.scale?.instrument ?? null;
  if (quantity === 'resistance') return tools.meter?.instrument ?? null;
  if (quantity === 'strand_diameter') return tools.micrometer?.instrument ?? null;
  if (BY_CALIPER.has(quantity)) return tools.caliper?.instrument ?? null;
  if (quantity === 'push_force') return (tools.kitchenScale ?? tools.scale)?.instrument ?? null;
  if (quantity === 'push_deflection') return (tools.caliper ?? tools.rule)?.instrument ?? null;
  // Volts and amps are read with what is at hand: the list knows no kind of it.
  if (BY_EYE.has(quantity) || isFourWire(quantity)) return null;
  return (tools.rule ?? tools.tape)?.instrument ?? null;
}

/** Counted readings by piece and quantity. */
export function countedReadings({ readings }: Pick<Trial, 'readings'>): (specimen: string, quantity: string) => number {
  const counts = new Map<string, number>();
  for (const r of readings) {
    if (r.standing !== 'counted') continue;
    const key = `${r.specimen}\u001f${r.quantity}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return (specimen, quantity) => counts.get(`${specimen}\u001f${quantity}`) ?? 0;
}
