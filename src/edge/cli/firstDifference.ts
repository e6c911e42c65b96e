/** Where two JSON values differ first. */
export interface Difference {
  /** Such as `cables[2].conductor_area.value`. */
  place: string;
  published: unknown;
  computed: unknown;
}

export interface Compared {
  /** Null when there is none. */
  first: Difference | null;
  /** The first place where two numbers differ; null when there is none. */
  firstFigure: Difference | null;
  /** Largest relative difference between two numbers that passed for the same; 0 when every digit is. */
  largest: number;
}

/**
 * Compares published JSON with what was computed again, whatever the order of their keys. Numbers count as the same
 * while their relative difference is at most `tolerance`; the largest one is reported either way.
 */
export function compareJson(published: unknown, computed: unknown, tolerance: number): Compared {
  const compared: Compared = { first: null, firstFigure: null, largest: 0 };
  walk(published, computed, '', tolerance, compared);
  return compared;
}

function walk(published: unknown, computed: unknown, place: string, tolerance: number, into: Compared): void {
  if (into.firstFigure !== null || Object.is(published, computed)) return;
  if (typeof published === 'number' && typeof computed === 'number') {
    const apart = relativeDifference(published, computed);
    if (apart <= tolerance) into.largest = Math.max(into.largest, apart);
    else {
      into.firstFigure = { place: place || WHOLE, published, computed };
      into.first ??= into.firstFigure;
    }
    return;
  }
  if (Array.isArray(published) && Array.isArray(computed)) {
    if (published.length !== computed.length)
      into.first ??= { place: `${place}.length`, published: published.length, computed: computed.length };
    else
      for (const [index, item] of published.entries())
        walk(item, computed[index], `${place}[${index}]`, tolerance, into);
    return;
  }
  if (isRecord(published) && isRecord(computed)) {
    for (const key of new Set([...Object.keys(published), ...Object.keys(computed)]))
      walk(published[key], computed[key], place === '' ? key : `${place}.${key}`, tolerance, into);
    return;
  }
  into.first ??= { place: place || WHOLE, published, computed };
}

const WHOLE = 'the whole';
/** What is left of 1 less a probability of 1 depends on the engine; no figure of the findings is as small as this. */
const ROUNDING_LEFT = 1e-12;

/** How far two numbers are apart, over the larger of them; 0 where only rounding parts them. */
export function relativeDifference(a: number, b: number): number {
  if (a === b || Math.abs(a - b) <= ROUNDING_LEFT) return 0;
  return Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
