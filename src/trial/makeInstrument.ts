import { cellNumber } from '../journal/cellQuantity.ts';
import type { Entry } from '../journal/entry.ts';
import { type LimitParts, readLimitText } from '../journal/limitText.ts';
import { ZERO_CELSIUS } from '../units/dimension.ts';
import { findUnit, type Unit } from '../units/unit.ts';
import { type CellReader, cell } from './cells.ts';
import type { ErrorLimit, Instrument } from './trial.ts';
import { usualLimit, usualLimitForDimension } from './usualLimits.ts';

const PER_CENT = 0.01;

/** A bare number out of a cell (a per cent sign after it is allowed), or null when it is blank or cannot be read. */
function numberIn(row: Entry['body'], name: string, cells: CellReader): number | null {
  const typed = cell(row, name).replace(/\s*%$/, '');
  if (typed === '') return null;
  const outcome = cellNumber(typed);
  if (outcome.ok) return outcome.value.value;
  cells.remark(row, name, outcome.found, outcome.expected);
  return null;
}

const NO_PARTS: LimitParts = { absolute: 0, percent: 0, counts: 0 };

/** What stands in max_error, or null when it is blank or cannot be read. */
function printedParts(row: Entry['body'], unit: Unit, cells: CellReader): LimitParts | null {
  const typed = cell(row, 'max_error');
  if (typed === '') return null;
  const outcome = readLimitText(typed, unit);
  if (outcome.ok) return outcome.value;
  cells.remark(row, 'max_error', outcome.found, outcome.expected);
  return null;
}

/** The stated limit: ±(max_error + max_error_percent of the reading + max_error_counts steps); null when all are blank. */
function statedLimit(row: Entry['body'], unit: Unit, resolution: number, cells: CellReader): ErrorLimit | null {
  const printed = printedParts(row, unit, cells);
  const percent = numberIn(row, 'max_error_percent', cells);
  const counts = numberIn(row, 'max_error_counts', cells);
  if (printed === null && percent === null && counts === null) return null;
  const parts = printed ?? NO_PARTS;
  return {
    absolute: parts.absolute + (parts.counts + (counts ?? 0)) * resolution,
    fraction: (parts.percent + (percent ?? 0)) * PER_CENT,
    assumed: false,
  };
}

/** Nothing stated and nothing usual known: one step of the display, and said to be assumed. */
function limitOf(kind: string, unit: Unit, resolution: number): ErrorLimit {
  const usual = usualLimit(kind, resolution) ?? usualLimitForDimension(unit.dimension, resolution);
  return usual?.limit ?? { absolute: resolution, fraction: 0, assumed: true };
}

/** A tool and its limit of error out of its row, or null (with a remark) when its unit or step cannot be read. */
export function makeInstrument(entry: Entry, cells: CellReader): Instrument | null {
  const row = entry.body;
  const unit = findUnit(cell(row, 'unit'));
  if (unit === null) {
    cells.remark(row, 'unit', `"${cell(row, 'unit')}"`, 'a unit, such as g, mm or mohm');
    return null;
  }
  const step = numberIn(row, 'resolution', cells);
  if (step === null || step <= 0) {
    cells.remark(row, 'resolution', `"${cell(row, 'resolution')}"`, 'a step above zero, such as 0.01');
    return null;
  }
  const kind = cell(row, 'kind');
  const resolution = unit.stepToSI(step);
  const kelvin = (name: string) => {
    const celsius = numberIn(row, name, cells);
    return celsius === null ? null : celsius + ZERO_CELSIUS;
  };
  return {
    entry: entry.id,
    row,
    instrument: cell(row, 'instrument'),
    kind,
    resolution,
    limit: statedLimit(row, unit, resolution, cells) ?? limitOf(kind, unit, resolution),
    validFrom: kelvin('valid_from_C'),
    validTo: kelvin('valid_to_C'),
  };
}
