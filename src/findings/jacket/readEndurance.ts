import { group } from 'd3-array';
import { cellNumber, cellQuantity } from '../../journal/cellQuantity.ts';
import type { Protocol } from '../../methods/jacket/protocols/protocol.ts';
import { isBareFluid, protocolOf } from '../../methods/jacket/protocols/protocols.ts';
import { failedAt, failedBetween, type Lifetime, survivedTo } from '../../numerics/survival/lifetime.ts';
import type { OnPiece, Trial } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import type { Warning } from '../schema.ts';
import { onePerPiece } from './onePerPiece.ts';
import { oneUnit } from './oneUnit.ts';

/** One row on record that can be counted. */
export interface EnduranceRow {
  specimen: string;
  cable: string;
  test: string;
  amount: number;
  unit: string;
  failed: boolean;
  /** Amount between two looks; null: watched all the time. */
  inspectedEvery: number | null;
  stress: number | null;
  stressUnit: string;
  /** °C */
  temperature: number | null;
  /** How the hours of an exposure are known; empty where the row does not say. */
  amountBy: 'clock' | 'planned' | '';
  /** Place among the rows that stand, in the order in which they were said. */
  place: number;
}

/** One test: the same abuse under the same load in the same unit. */
export interface TestRead {
  test: string;
  protocol: Protocol | null;
  kind: 'amount' | 'passed';
  unit: string;
  stress: number | null;
  stressUnit: string;
  /** One row for each piece. */
  rows: EnduranceRow[];
}

export interface EnduranceRead {
  tests: TestRead[];
  warnings: Warning[];
}

const cellOf = ({ row }: OnPiece, column: string) => (row[column] ?? '').trim();

function numberOf(piece: OnPiece, column: string): number | null {
  const typed = cellOf(piece, column);
  const outcome = typed === '' ? null : cellNumber(typed);
  return outcome?.ok ? outcome.value.value : null;
}

function temperatureOf(piece: OnPiece): number | null {
  const typed = cellOf(piece, 'temperature');
  if (typed === '') return null;
  const outcome = cellQuantity(typed, 'temperature', cellOf(piece, 'temperature_unit') || 'C');
  return outcome.ok ? outcome.value.value - ZERO_CELSIUS : null;
}

function amountByOf(piece: OnPiece): EnduranceRow['amountBy'] {
  const said = cellOf(piece, 'amount_by').toLowerCase();
  return said === 'clock' || said === 'planned' ? said : '';
}

const warning = (code: string, cable: string | null, text: string): Warning => ({ code, cable, text });

/** Rows that no later row replaces. */
function standing(rows: readonly OnPiece[], warnings: Warning[]): OnPiece[] {
  const names = new Map(
    rows.map((r) => [cellOf(r, 'endurance'), r]).filter(([name]) => name !== '') as [string, OnPiece][],
  );
  const replaced = new Set<OnPiece>();
  for (const row of rows) {
    const target = cellOf(row, 'replaces');
    if (target === '') continue;
    const found = names.get(target);
    if (found && found !== row) replaced.add(found);
    else
      warnings.push(
        warning(
          'endurance-replaces-nothing',
          null,
          `A row on ${row.specimen} replaces "${target}", and no endurance row has that name: both may count now.`,
        ),
      );
  }
  return rows.filter((row) => !replaced.has(row));
}

/** A row as numbers, or the sentence that says why it is left out. */
function readRow(piece: OnPiece, place: number, cableOf: ReadonlyMap<string, string>): EnduranceRow | Warning {
  const { specimen } = piece;
  const test = cellOf(piece, 'test');
  const cable = cableOf.get(specimen);
  if (!cable)
    return warning(
      'endurance-piece-not-known',
      null,
      `${test} on "${specimen}": no such piece is described; left out.`,
    );
  const outcome = cellOf(piece, 'outcome').toLowerCase();
  const typed = cellOf(piece, 'amount');
  const unit = cellOf(piece, 'unit');
  if (outcome !== 'failed' && outcome !== 'survived')
    return warning(
      'endurance-outcome-missing',
      cable,
      `${specimen}, ${test}: it does not say whether the piece failed; left out.`,
    );
  if (typed === '') {
    const text =
      outcome === 'survived'
        ? `${specimen} survived the ${test} test, but not how much of it: say at what amount the test was ended; left out.`
        : `${specimen} failed in the ${test} test, but not after how much; left out.`;
    return warning('endurance-amount-missing', cable, text);
  }
  const amount = numberOf(piece, 'amount');
  if (amount === null || !(amount > 0))
    return warning(
      'endurance-amount-impossible',
      cable,
      `${specimen}, ${test}: an amount of "${typed}" cannot be; it must be above zero; left out.`,
    );
  return {
    specimen,
    cable,
    test,
    amount,
    unit,
    failed: outcome === 'failed',
    inspectedEvery: numberOf(piece, 'inspected_every'),
    stress: numberOf(piece, 'stress'),
    stressUnit: cellOf(piece, 'stress_unit'),
    temperature: temperatureOf(piece),
    amountBy: amountByOf(piece),
    place,
  };
}

const plain = (text: string) => text.toLowerCase().replace(/\s+/g, ' ');

/** Rows of one test apart by load; a row that notes none goes with the others where they all share one. */
function byStress(rows: readonly EnduranceRow[], warnings: Warning[]): EnduranceRow[][] {
  const key = (r: EnduranceRow) => (r.stress === null ? '' : `${r.stress} ${plain(r.stressUnit)}`);
  const groups = group(rows, key);
  const bare = groups.get('');
  const loads = [...groups.keys()].filter((k) => k !== '');
  if (!bare || loads.length !== 1) return [...groups.values()];
  warnings.push(
    warning(
      'endurance-load-not-noted',
      null,
      `${bare[0].test}: ${bare.map((r) => r.specimen).join(', ')} note no load; ${loads[0]}, as on the others, was taken.`,
    ),
  );
  const [{ stress, stressUnit }] = groups.get(loads[0])!;
  return [rows.map((r) => ({ ...r, stress, stressUnit }))];
}

function testOf(rows: readonly EnduranceRow[], warnings: Warning[]): TestRead[] {
  const protocol = protocolOf(rows[0].test);
  const sameAmount = rows.every((r) => r.amount === rows[0].amount);
  const kind = protocol?.kind ?? (sameAmount ? 'passed' : 'amount');
  // Exposures of different length are different tests.
  const parts = kind === 'passed' ? [...group(rows, (r) => r.amount).values()] : [rows];
  return parts.map((part) => ({
    test: part[0].test,
    protocol,
    kind,
    unit: part[0].unit,
    stress: part[0].stress,
    stressUnit: part[0].stressUnit,
    rows: onePerPiece(part, warnings),
  }));
}

/** Reads a trial's endurance rows into tests. What cannot count is left out with a sentence. */
export function readEndurance(trial: Trial): EnduranceRead {
  const warnings: Warning[] = [];
  const cableOf = new Map(trial.specimens.map((s) => [s.specimen, s.cable]));
  const rows: EnduranceRow[] = [];
  for (const [place, piece] of standing(trial.endurance, warnings).entries()) {
    const read = readRow(piece, place, cableOf);
    if ('code' in read) warnings.push(read);
    else rows.push(read);
  }
  const tests = [...group(rows, (r) => plain(r.test)).values()].flatMap((of) =>
    byStress(oneUnit(of, warnings), warnings).flatMap((same) => testOf(same, warnings)),
  );
  const found = tests.filter((t) => t.rows.length > 0);
  return { tests: found, warnings: [...warnings, ...fluidsNotNamed(found)] };
}

/** Every fluid is a test of its own, so a fluid without a name may be several. */
function fluidsNotNamed(tests: readonly TestRead[]): Warning[] {
  return tests
    .filter(({ test }) => isBareFluid(test))
    .map(({ test, rows }) =>
      warning(
        'endurance-fluid-not-named',
        null,
        `${test}: ${rows.map((r) => r.specimen).join(', ')} lay in a fluid that is not named. If it was not one and the same, they do not compare.`,
      ),
    );
}

/** How long a piece lasted, as far as its row says. */
export function lifetimeOf({ amount, failed, inspectedEvery }: EnduranceRow): Lifetime {
  if (!failed) return survivedTo(amount);
  return inspectedEvery === null ? failedAt(amount) : failedBetween(Math.max(0, amount - inspectedEvery), amount);
}
