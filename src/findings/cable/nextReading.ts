import { lnFigure } from '../../methods/assay/figures.ts';
import type { CableAssay, JointAssay } from '../../methods/assay/joint.ts';
import { halfWidth, lnAreaAfter, type Proposal } from '../../methods/assay/oneMore.ts';
import type { AssayRow, RowKind } from '../../methods/assay/row.ts';
import { lnLikelihoodOfSight } from '../../methods/metal/eye.ts';
import { capital } from '../../units/capital.ts';
import { ownNormal, ownUniform } from '../rows/effects.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { CableFindings } from '../schema.ts';

interface Candidate {
  reading: string;
  /** What to do, in the imperative, without a full stop. */
  doThis: string;
  proposal: Proposal;
}

/** Tools taken for a reading that was not made: what a hobby bench owns. Common practice, no source. */
const MICROMETER_LIMIT = 4e-6;
const POCKET_SCALE_LIMIT = 3e-5;
const METER_FRACTION = 0.01;
const METER_FLOOR = 5e-6;
const CONTACTS = 1e-3;
/** An instrument checked against a known thing keeps about a quarter of its limit. Common practice, no source. */
const AFTER_A_CHECK = 0.25;
/** A further reading that narrows the interval by less than this is not worth naming. */
const WORTH_NAMING = 0.92;

const none = { sight: null, shrink: {} };

function proposedRow(kind: RowKind, text: string, own: AssayRow['own'], temperature: AssayRow['temperature'] = null) {
  return { kind, text, specimen: null, shared: [], own, temperature };
}

function hasKind(c: CableReadings, kind: RowKind): boolean {
  return c.rows.some((r) => r.kind === kind);
}

/** Longest piece that resistance could be read over, m. */
function longestPiece(c: CableReadings): number {
  const cut = c.specimens.flatMap((s) => (s.cutLength === null ? [] : [s.cutLength]));
  return Math.max(c.cable.boughtLength ?? 0, ...cut, 1) - 0.1;
}

function ohms(c: CableReadings, ohmsPerMetre: number | null): Candidate[] {
  const length = longestPiece(c);
  const now = c.rows.filter((r) => r.kind === 'resistance');
  const expected = (ohmsPerMetre ?? 5e-4) * length;
  const limit = METER_FRACTION + METER_FLOOR / expected + CONTACTS / length;
  const row = proposedRow('resistance', 'Resistance', [ownUniform('one more', 'One more', limit)], {
    above20: 0,
    input: 'copper temperature',
  });
  if (now.length > 0) return [];
  const doThis = `Read the resistance of ${length.toFixed(1)} m with four wires, with a thermometer on the copper`;
  return [{ reading: 'resistance', doThis, proposal: { row, ...none } }];
}

function mass(c: CableReadings): Candidate[] {
  if (hasKind(c, 'mass')) return [];
  const length = 0.3;
  const limit = POCKET_SCALE_LIMIT / 0.05 + CONTACTS / 2 / length;
  const row = proposedRow('mass', 'Mass', [ownUniform('one more', 'One more', limit), ownNormal('s', 'S', 0.003)]);
  return [
    {
      reading: 'conductor_mass',
      doThis: 'Strip a 300 mm piece and weigh its bare conductor',
      proposal: { row, ...none },
    },
  ];
}

function strands(c: CableReadings): Candidate[] {
  const last = c.rows.find((r) => r.kind === 'strands');
  const diameter = c.groups.of('strand_diameter')[0]?.mean ?? 2.5e-4;
  const byCaliper = last && c.groups.of('strand_diameter').every((g) => g.tool.limit.absolute > 2 * MICROMETER_LIMIT);
  if (last && !byCaliper) return [];
  const row = proposedRow('strands', 'Strands', [
    ownUniform('one more', 'One more', (2 * MICROMETER_LIMIT) / diameter),
    ownNormal('count', 'Count', 0.004),
  ]);
  const doThis = last
    ? 'Measure the strands with a micrometer'
    : 'Count the strands and measure eight of them with a micrometer';
  return [{ reading: 'strand_diameter', doThis, proposal: { row, ...none } }];
}

const SIGHT_OF: Readonly<Record<string, string>> = {
  copper: 'red through',
  'tinned copper': 'tin outside',
  'copper-clad aluminium': 'white core',
  'tinned clad aluminium': 'white core',
  aluminium: 'white core',
};

function scrape(c: CableReadings, assay: CableAssay): Candidate[] {
  if (Object.values(c.assay.sight).some((l) => l < 0) || c.assay.control) return [];
  const top = assay.components.reduce((a, b) => (b.weight > a.weight ? b : a)).supposition.metal.metal;
  const seen = SIGHT_OF[top];
  if (!seen) return [];
  const sight = lnLikelihoodOfSight([{ look: 'scraped_strand', seen, count: null, seenIn: null }]);
  const doThis = 'Scrape a strand bare with a blade and look at it: red all through, tin over red, or white inside';
  return [{ reading: 'scraped_strand', doThis, proposal: { row: null, sight, shrink: {} } }];
}

function checks(joint: JointAssay, c: CableReadings): Candidate[] {
  const used = new Set(c.rows.flatMap((r) => r.shared.map((s) => s.input)));
  const list: Candidate[] = [];
  const meters = joint.inputs.filter((i) => used.has(i.input) && (i.unit === 'ohm' || isMeterGain(i.input, c)));
  if (meters.length)
    list.push({
      reading: 'reference_resistor',
      doThis: 'Read a reference resistor with the same meter and enter its limit anew',
      proposal: {
        ...none,
        row: null,
        shrink: shrinkAll(
          meters.map((m) => m.input),
          AFTER_A_CHECK,
        ),
      },
    });
  const scales = joint.inputs.filter((i) => used.has(i.input) && i.unit === 'kg');
  if (scales.length)
    list.push({
      reading: 'check_weight',
      doThis: 'Put a check weight on the same scale and enter its limit anew',
      proposal: {
        ...none,
        row: null,
        shrink: shrinkAll(
          scales.map((m) => m.input),
          AFTER_A_CHECK,
        ),
      },
    });
  const untaken = c.rows.flatMap((r) =>
    r.temperature?.input.startsWith('temperature not taken') ? [r.temperature.input] : [],
  );
  if (untaken.length)
    list.push({
      reading: 'temperature',
      doThis: 'Tape a thermometer to the copper and enter its temperature with the ohms',
      proposal: { ...none, row: null, shrink: shrinkAll(untaken, 0.1) },
    });
  return list;
}

function isMeterGain(input: string, c: CableReadings): boolean {
  return c.rows.some((r) => r.kind === 'resistance' && r.shared.some((s) => s.input === input));
}

function shrinkAll(inputs: readonly string[], factor: number): Record<string, number> {
  return Object.fromEntries(inputs.map((i) => [i, factor]));
}

/**
 * The single further measurement that would narrow the area's interval most, if it came out as now foretold; null when none
 * of them would help worth the work. Where the area stands "if copper" the width that is shown is not what the reading is
 * chosen by: it is chosen to tell the metal.
 *
 * @param known ohmsPerMetre as now foretold, Ω/m; ifCopper set when the area is shown under that condition
 */
export function nextReading(
  joint: JointAssay,
  c: CableReadings,
  assay: CableAssay,
  level: number,
  known: { ohmsPerMetre: number | null; ifCopper: string | undefined },
): CableFindings['next_reading'] {
  const now = halfWidth(lnFigure(assay, 'area'), level);
  const candidates = [
    ...ohms(c, known.ohmsPerMetre),
    ...mass(c),
    ...strands(c),
    ...scrape(c, assay),
    ...checks(joint, c),
  ];
  let best: { candidate: Candidate; then: number } | null = null;
  for (const candidate of candidates) {
    const then = halfWidth(lnAreaAfter(joint, assay, candidate.proposal), level);
    if (!best || then < best.then) best = { candidate, then };
  }
  if (!best || best.then > WORTH_NAMING * now) return null;
  const mm2 = (x: number) => (x * 1e6).toPrecision(2);
  const { doThis, reading } = best.candidate;
  return {
    reading,
    half_width_now: known.ifCopper ? null : now * 1e6,
    half_width_then: best.then * 1e6,
    unit: 'mm2',
    text: known.ifCopper
      ? `${doThis}: that tells the metal, and would leave about ± ${mm2(best.then)} mm².`
      : `${doThis}: ± ${mm2(now)} mm² would become about ± ${mm2(best.then)} mm².`,
  };
}

/** Where the readings disagree, the first thing to do is to take the odd one again. */
export function takeAgain(reading: string, doThis: string): CableFindings['next_reading'] {
  return {
    reading,
    half_width_now: null,
    half_width_then: null,
    unit: 'mm2',
    text: `${capital(doThis)}: that comes before any further reading.`,
  };
}

/** What to do first when nothing of a cable can be worked out yet. */
export function firstReading(): CableFindings['next_reading'] {
  return {
    reading: 'conductor_mass',
    half_width_now: null,
    half_width_then: null,
    unit: 'mm2',
    text: 'Weigh the bare conductor of a piece of known length: that alone judges whether the copper is there.',
  };
}
