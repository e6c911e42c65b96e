/** A lot: twenty invented cables read on one bench, and the tables that a tester would have written down. */
import { drawCable, type TrueCable } from './cables.ts';
import type { Complication } from './complications.ts';
import { densityOf, resistivityOf } from './metals.ts';
import { type Draws, drawsFrom } from './random.ts';
import { type PackageTables, type Row, row, shown } from './tables.ts';
import { BENCHES, type Bench, type Benches, benchRows, type ReadTool, takeTools } from './tools.ts';

export interface Lot {
  name: string;
  cables: readonly TrueCable[];
  tables: PackageTables;
}

export interface LotPlan {
  seed: number;
  bench: Benches;
  cables?: number;
  complication?: Complication;
  /** Chance that a cable is concerned by the complication; 1 when absent. Faults of the bench concern all. */
  prevalence?: number;
}

const PLAIN: Complication = { name: 'plain', of: 'bench' };
const NONE: Complication = { name: 'none', of: 'cable' };
const CABLES_PER_LOT = 20;
const REPEATS = 3;
const STRANDS_GAUGED = 8;
/** One piece against the next, and one strand against the next, as drawing and twisting leave them. */
const PIECE_VARIATION = 0.001;
const STRAND_VARIATION = 0.004;
/** Distance from each end of a whole length to the voltage contact, m. */
const CONTACT_INSET = 0.05;

/** How a lot is taken apart and ohmed: two pieces of 300 mm or one of 150; over 1 m or over the whole bought length. */
interface Procedure {
  pieceLength: number; // m
  pieces: number;
  wholeLength: boolean;
  /** °C of the room. */
  room: number;
}

export function drawLot(plan: LotPlan): Lot {
  const draws = drawsFrom(plan.seed);
  const complication = plan.complication ?? PLAIN;
  const bench = BENCHES[plan.bench];
  const read = takeTools(bench, draws);
  const procedure = drawProcedure(draws, complication);
  const prevalence = complication.of === 'bench' ? 1 : (plan.prevalence ?? 1);
  const cables = Array.from({ length: plan.cables ?? CABLES_PER_LOT }, (_, index) => {
    const id = `cable-${String(index + 1).padStart(2, '0')}`;
    return drawCable(draws, id, draws.unit() < prevalence, complication.metal);
  });
  const name = `lot-${plan.bench}-${plan.seed}`;
  return { name, cables, tables: tablesOf(name, cables, { draws, read, bench, procedure, complication }) };
}

function drawProcedure(draws: Draws, complication: Complication): Procedure {
  const long = draws.unit() < 0.5;
  const millimetres = complication.pieceLength ?? (long ? 300 : 150);
  const wholeLength = draws.unit() < 0.5 && complication.contactMilliohms === undefined;
  return {
    pieceLength: millimetres / 1000,
    pieces: millimetres === 300 ? 2 : 1,
    wholeLength,
    room: draws.between(12, 28),
  };
}

interface Work {
  draws: Draws;
  read: ReadTool;
  bench: Bench;
  procedure: Procedure;
  complication: Complication;
}

function tablesOf(name: string, cables: readonly TrueCable[], work: Work): PackageTables {
  const tables = {
    trial: [row({ trial: name, title: `Simulated lot ${name}`, disclosure: 'Simulated; no real cable.' })],
    cables: cables.map((cable) =>
      row({
        cable: cable.id,
        maker: cable.id,
        claimed_size: cable.claimedSize,
        claimed_metal: cable.claimedMetal,
      }),
    ),
    instruments: benchRows(work.bench),
    specimens: [] as Row[],
    evidence: cables.map((cable) => row({ cable: cable.id, look: 'scraped_strand', count: 10, seen: seenOn(cable) })),
    readings: [] as Row[],
  };
  for (const cable of cables) {
    const complication = cable.concerned ? work.complication : NONE;
    readCable(cable, { ...work, complication }, tables);
  }
  return tables;
}

/** What a scraped strand shows to the eye. */
function seenOn(cable: TrueCable): string {
  if (cable.metal.name === 'bare') return 'red through';
  if (cable.metal.name === 'tinned') return 'tin outside';
  return cable.metal.name === 'aluminium' ? 'white through' : 'white core';
}

function readCable(cable: TrueCable, work: Work, tables: { specimens: Row[]; readings: Row[] }): void {
  const record = (specimen: string, quantity: string, value: string, unit: string, extra = {}) => {
    tables.readings.push(
      row({ reading: `r${tables.readings.length + 1}`, specimen, quantity, value, unit, instrument: null, ...extra }),
    );
  };
  const specimen = (kind: string, number: number | null) => {
    const id = number === null ? `${cable.id}-${kind}` : `${cable.id}-${kind}-${number}`;
    tables.specimens.push(row({ specimen: id, cable: cable.id, kind }));
    return id;
  };
  readOhms(cable, work, specimen('whole', null), record);
  for (let piece = 1; piece <= work.procedure.pieces; piece++) {
    const id = specimen('apart', piece);
    readMass(cable, work, piece, id, record);
    if (piece === 1) readStrands(cable, work, id, record);
  }
}

type Recorder = (specimen: string, quantity: string, value: string, unit: string, extra?: object) => void;

/** R = ρ(T) · k · L / A over the distance between the voltage contacts. */
function readOhms(cable: TrueCable, work: Work, specimen: string, record: Recorder): void {
  const { draws, read, procedure, complication } = work;
  const between = procedure.wholeLength ? draws.between(1.5, 3) - 2 * CONTACT_INSET : 1;
  const written = read('tape', between * 1000);
  const copper = procedure.room + draws.between(-0.5, 0.5);
  for (let repeat = 0; repeat < REPEATS; repeat++) {
    const ohms = (resistivityOf(cable.metal, copper) * cable.layFactor * between) / cable.area;
    const milliohms = ohms * 1000 + (complication.contactMilliohms ?? 0);
    record(specimen, 'resistance', read('meter', milliohms), 'mohm', {
      instrument: 'meter',
      at_length: written,
      at_length_unit: 'mm',
      temperature: read('thermometer', copper - (complication.warmer ?? 0)),
      temperature_unit: 'C',
    });
  }
}

/** m = A · k · ρ · L for the stripped strands of one piece. */
function readMass(cable: TrueCable, work: Work, piece: number, specimen: string, record: Recorder): void {
  const { draws, read, procedure, complication } = work;
  const length = procedure.pieceLength + draws.scatter(0.0005);
  const here = cable.area * (1 + draws.scatter(PIECE_VARIATION));
  let grams = here * cable.layFactor * densityOf(cable.metal) * length * 1000 * (complication.massShare ?? 1);
  if (piece === 2 && complication.secondSpecimenError) {
    grams *= 1 + complication.secondSpecimenError * draws.pick([-1, 1]);
  }
  const written = length * 1000 + (complication.lengthExcess ?? 0);
  for (let repeat = 0; repeat < REPEATS; repeat++) {
    record(specimen, 'conductor_length', read('rule', written), 'mm', { instrument: 'rule' });
    record(specimen, 'conductor_mass', read('scale', grams), 'g', { instrument: 'scale' });
  }
}

function readStrands(cable: TrueCable, work: Work, specimen: string, record: Recorder): void {
  const { draws, read, complication } = work;
  record(specimen, 'strand_count', shown(cable.strands * (complication.countShare ?? 1), 1), 'count');
  // The mean square over strands is the cable's; the mean diameter is smaller by half the variance.
  const mean = cable.strandDiameter / Math.sqrt(1 + STRAND_VARIATION ** 2);
  for (let strand = 0; strand < STRANDS_GAUGED; strand++) {
    const diameter = mean * (1 + draws.scatter(STRAND_VARIATION));
    record(specimen, 'strand_diameter', read('strand-gauge', diameter * 1000), 'mm', { instrument: 'strand-gauge' });
  }
}
