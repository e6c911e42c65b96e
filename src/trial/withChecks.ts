import { quantityNamed } from '../journal/quantities.ts';
import type { Dimension } from '../units/dimension.ts';
import { typedText } from '../units/typedText.ts';
import { findUnit } from '../units/unit.ts';
import { cell } from './cells.ts';
import { checkedLimit } from './checkedLimit.ts';
import { checksThatCount } from './checksThatCount.ts';
import type { Check, Instrument, Reading, Remark } from './trial.ts';

const dimensionOf = (unit: string): Dimension | null => findUnit(unit)?.dimension ?? null;

/** Largest reading that counts and was taken with the tool, of what the tool reads; 0 when there is none. */
function largestReading(tool: string, dimension: Dimension | null, readings: readonly Reading[]): number {
  // Kelvins do not begin where a thermometer's error does: there a check holds for all readings alike.
  if (dimension === 'temperature') return 0;
  let largest = 0;
  for (const { instrument, quantity, standing, value } of readings) {
    if (instrument !== tool || standing !== 'counted' || quantityNamed(quantity)?.dimension !== dimension) continue;
    largest = Math.max(largest, Math.abs(value));
  }
  return largest;
}

function furtherOff(tool: Instrument, check: Check): Remark {
  const { against, row } = check;
  const thing = against === '' || against === 'other' ? 'something' : `a ${against}`;
  const unit = cell(row, 'unit');
  return {
    code: 'tool-outside-its-limit',
    cable: null,
    readings: [],
    text: `Tool ${tool.instrument} read ${typedText(cell(row, 'read_value'), unit)} on ${thing} of ${typedText(cell(row, 'known_value'), unit)}, further off than its limit of error allows: the limit is taken from that check. If it was typed wrong, take the check back under Tools on Plan.`,
  };
}

function otherKind(check: Check): Remark {
  const text = `Check ${check.check} of tool ${check.instrument} is in ${cell(check.row, 'unit')}, which that tool does not read: it is not used.`;
  return { code: 'check-of-another-kind', cable: null, readings: [], text };
}

/**
 * The tools with the limits that their checks give them.
 *
 * @param readings with their standing: they tell how far each tool was used
 * @param remarks gets one for each check that fits no tool of its kind, or that found a tool further off than it may be
 */
export function withChecks(
  tools: readonly Instrument[],
  checks: readonly Check[],
  readings: readonly Reading[],
  remarks: Remark[],
): Instrument[] {
  if (checks.length === 0) return [...tools];
  return tools.map((tool) => {
    const dimension = dimensionOf(cell(tool.row, 'unit'));
    const own = checks.filter((check) => check.instrument === tool.instrument);
    const fitting = own.filter((check) => dimensionOf(cell(check.row, 'unit')) === dimension);
    remarks.push(...own.filter((check) => !fitting.includes(check)).map(otherKind));
    if (fitting.length === 0) return tool;
    const counting = checksThatCount(fitting);
    const largest = largestReading(tool.instrument, dimension, readings);
    const { limit, outside } = checkedLimit(tool.limit, tool.resolution, counting, largest);
    for (const check of counting) if (outside.includes(check.check)) remarks.push(furtherOff(tool, check));
    return { ...tool, limit, ownLimit: tool.limit };
  });
}
