import type { Check, ErrorLimit } from './trial.ts';

export type CheckFigures = Pick<Check, 'check' | 'zero' | 'known' | 'knownError' | 'read'>;

export interface CheckedLimit {
  limit: ErrorLimit;
  /** Names of checks in which the tool was further off than its limit allows. */
  outside: string[];
}

/** The limit at a reading. */
const allowedAt = (limit: ErrorLimit, reading: number): number => limit.absolute + limit.fraction * Math.abs(reading);

/** How far off the tool may be where it was checked: what was seen, what the known thing may hide, and one step. */
const boundOf = ({ read, known, knownError }: CheckFigures, resolution: number): number =>
  Math.abs(read - known) + knownError + resolution;

/**
 * A bound for readings up to `largest`. It holds as it is up to the largest value checked; beyond that it grows in
 * proportion, because an error of gain does, and a check at a small value cannot show one.
 */
function boundUpTo(checks: readonly CheckFigures[], resolution: number, largest: number): number {
  const reach = Math.max(...checks.map(({ known }) => Math.abs(known)));
  const bounds = checks.map((check) => {
    const beyond = Math.abs(check.known) === reach && reach > 0 ? Math.max(1, largest / reach) : 1;
    return boundOf(check, resolution) * beyond;
  });
  return Math.max(...bounds);
}

function byKnownThings(limit: ErrorLimit, resolution: number, known: readonly CheckFigures[], largest: number) {
  const reach = Math.max(...known.map((check) => Math.abs(check.known)));
  const outside = known.filter(
    (check) => Math.abs(check.read - check.known) > allowedAt(limit, check.known) + check.knownError,
  );
  const bound = boundUpTo(known, resolution, largest);
  const narrower = bound < allowedAt(limit, largest > 0 ? largest : reach);
  const unstated = limit.assumed && largest <= reach;
  const taken = narrower || unstated || outside.length > 0;
  return {
    limit: taken ? { absolute: bound, fraction: 0, assumed: false, checked: true } : limit,
    outside: outside.map(({ check }) => check),
  };
}

/** Half the spread of the zeros; 0 with fewer than two of them. */
function zeroDrift(zeros: readonly CheckFigures[]): number {
  if (zeros.length < 2) return 0;
  const read = zeros.map((zero) => zero.read);
  return (Math.max(...read) - Math.min(...read)) / 2;
}

/**
 * The limit of error of a tool once it was checked.
 *
 * Against known things: |read − known| + error of the known thing + one step, the worst of all checks, as an absolute limit.
 * It takes the place of a limit that was only assumed, and of a stated one when it is narrower where the tool was used.
 * It holds up to the largest value checked and grows in proportion beyond it; a check too small to say anything about the
 * readings leaves the limit as it was. A tool that was further off than its limit allows gets the limit that the check shows,
 * whatever the box says.
 *
 * Zero checks: half the spread of the zeros is added to the absolute part when it is larger than that part.
 *
 * Common practice, no source. Not for a check made with the very thing that is then to be measured.
 *
 * @param limit as stated or assumed, SI unit of what the tool reads
 * @param resolution one step of the tool, SI
 * @param checks of this tool alone
 * @param largest largest reading taken with it, SI; 0 when there is none, or where scales have no true zero (temperatures)
 */
export function checkedLimit(
  limit: ErrorLimit,
  resolution: number,
  checks: readonly CheckFigures[],
  largest = 0,
): CheckedLimit {
  const known = checks.filter(({ zero }) => !zero);
  const held = known.length > 0 ? byKnownThings(limit, resolution, known, largest) : { limit, outside: [] };
  const drift = zeroDrift(checks.filter(({ zero }) => zero));
  if (!(drift > held.limit.absolute)) return held;
  return { ...held, limit: { ...held.limit, absolute: held.limit.absolute + drift } };
}
