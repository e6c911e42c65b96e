/** One day at the invented bench: the readings that the tools would have shown, in the order in which they are taken. */
import type { Draws } from '../../test/simulate/random.ts';
import { type Row, row, shown } from '../../test/simulate/tables.ts';
import { type ToolName, toolsFrom } from './tools.ts';
import type { Truth } from './truths.ts';

const GRAMS = 1000;
const MM = 1000;
const MILLIOHMS = 1000;
/** Distance from each end of the ohmed length to the voltage contact: half as much again as the way round the bundle. */
const CONTACT_INSET = 0.045; // m
const APART_LENGTH = 0.3; // m
const CONTROL_APART_LENGTH = 0.6; // m: thin wire weighs little, so a longer piece is weighed
const ROOM = 18.4; // °C in the morning
const WARMING = 0.006; // °C for each reading taken, as the workshop warms up
const UNITS: Record<ToolName, string> = {
  'pocket-scale': 'g',
  rule: 'mm',
  tape: 'mm',
  caliper: 'mm',
  micrometer: 'mm',
  'ohm-meter': 'mohm',
  thermometer: 'C',
};

export function apartLength(truth: Truth): number {
  return truth.role === 'control' ? CONTROL_APART_LENGTH : APART_LENGTH;
}

/** All readings of the day. One pair of digits is swapped at the keyboard and put right at the end. */
export function benchDay(truths: readonly Truth[], draws: Draws): Row[] {
  const read = toolsFrom(draws);
  const rows: Row[] = [];
  const clock = Date.UTC(2026, 9, 3, 8, 40);
  let roomNow = ROOM;

  function record(specimen: string, quantity: string, value: string, tool: ToolName | null, extra = {}): void {
    const minutes = rows.length;
    roomNow = ROOM + WARMING * minutes;
    rows.push(
      row({
        reading: `r${String(rows.length + 1).padStart(3, '0')}`,
        specimen,
        quantity,
        value,
        unit: tool ? UNITS[tool] : 'count',
        instrument: tool,
        at: new Date(clock + minutes * 60_000).toISOString().replace('.000Z', 'Z'),
        temperature: read('thermometer', roomNow),
        temperature_unit: 'C',
        by: 'club bench',
        ...extra,
      }),
    );
  }

  for (const truth of truths) wholeLengthOhms(truth, read, draws, () => roomNow, record);
  for (const truth of truths) apartPiece(truth, read, draws, record);
  swapTwoDigits(rows, record);
  return rows;
}

type Read = (name: ToolName, truth: number) => string;
type Recorder = (specimen: string, quantity: string, value: string, tool: ToolName | null, extra?: object) => void;

function wholeLengthOhms(truth: Truth, read: Read, draws: Draws, room: () => number, record: Recorder): void {
  const between = truth.ohmedLength - 2 * CONTACT_INSET;
  const area = metalArea(truth);
  const thermalVoltage = draws.scatter(0.0004); // mΩ at the meter's current; turns its sign with the polarity
  const typed = read('tape', between * MM);
  for (const position of ['forward', 'reverse']) {
    for (let turn = 0; turn < 3; turn++) {
      const warmth = 1 + truth.temperatureCoefficient * (room() - 20);
      const ohms = (truth.resistivity * warmth * truth.layFactor * between) / area;
      const shift = position === 'forward' ? thermalVoltage : -thermalVoltage;
      record(`${truth.id}-whole`, 'resistance', read('ohm-meter', ohms * MILLIOHMS + shift), 'ohm-meter', {
        at_length: typed,
        at_length_unit: 'mm',
        position,
      });
    }
  }
}

function apartPiece(truth: Truth, read: Read, draws: Draws, record: Recorder): void {
  const piece = `${truth.id}-apart`;
  const length = apartLength(truth) + draws.scatter(0.0006);
  const conductor = metalArea(truth) * truth.layFactor * truth.density * length;
  const outer = truth.bundleDiameter + 2 * truth.wall;
  const jacket = (Math.PI / 4) * (outer ** 2 - truth.bundleDiameter ** 2) * truth.jacketDensity * length;
  const separator = truth.separatorPerMetre * length;
  const repeat = (quantity: string, value: number, tool: ToolName, count = 3) => {
    for (let i = 0; i < count; i++) record(piece, quantity, read(tool, value), tool);
  };
  const round = (quantity: string, value: (angle: number) => number, count: number, place: (i: number) => string) => {
    for (let i = 0; i < count; i++) {
      const angle = (2 * Math.PI * i) / count;
      record(piece, quantity, read('caliper', value(angle) * MM), 'caliper', { position: place(i) });
    }
  };

  repeat('specimen_length', length * MM, 'rule');
  repeat('specimen_mass', (conductor + jacket + separator) * GRAMS, 'pocket-scale');
  round(
    'outer_diameter',
    () => outer + draws.scatter(0.00003),
    4,
    (i) => `${45 * i} degrees`,
  );
  repeat('conductor_length', length * MM, 'rule');
  repeat('conductor_mass', conductor * GRAMS, 'pocket-scale');
  repeat('jacket_mass', jacket * GRAMS, 'pocket-scale');
  if (separator > 0) repeat('separator_mass', separator * GRAMS, 'pocket-scale');
  repeat('conductor_diameter', truth.bundleDiameter * MM, 'caliper');
  round(
    'wall_thickness',
    (angle) => truth.wall + truth.wallOffset * Math.cos(angle),
    6,
    (i) => `${i === 0 ? 12 : 2 * i} o'clock`,
  );
  strands(truth, read, draws, piece, record);
}

function strands(truth: Truth, read: Read, draws: Draws, piece: string, record: Recorder): void {
  if (truth.counted.bundles === null) {
    record(piece, 'strand_count', String(truth.counted.strands), null);
  } else {
    record(piece, 'bundle_count', String(truth.counted.bundles), null);
    for (let bundle = 0; bundle < 2; bundle++) {
      record(piece, 'strands_in_bundle', String(truth.counted.strands), null);
    }
  }
  const sampled = truth.strands === 1 ? 6 : 8;
  for (let i = 0; i < sampled; i++) {
    const drawn = truth.strandDiameter * (1 + draws.scatter(0.004)); // one strand against the next, as drawn through its die
    record(piece, 'strand_diameter', read('micrometer', drawn * MM), 'micrometer');
  }
}

/** m²; the scatter between strands adds its square, too little to show (0.004² of the area). */
export function metalArea(truth: Truth): number {
  return (truth.strands * Math.PI * truth.strandDiameter ** 2) / 4;
}

/** The second weighing of one conductor was first typed with its leading digits swapped; both rows stay on record. */
function swapTwoDigits(rows: Row[], record: Recorder): void {
  const weighings = rows.filter((each) => each.specimen === 'quill-apart' && each.quantity === 'conductor_mass');
  const second = weighings[1]!;
  const right = second.value!;
  const place = rows.indexOf(second);
  rows[place] = { ...second, value: `${right[1]}${right[0]}${right.slice(2)}` };
  record('quill-apart', 'conductor_mass', right, 'pocket-scale', {
    replaces: second.reading!,
    why: 'first two digits swapped when typing',
  });
}

/** Displayed length of a cut, as it is written on the tag. */
export function tagLength(metres: number): string {
  return shown(metres * MM, 1);
}
