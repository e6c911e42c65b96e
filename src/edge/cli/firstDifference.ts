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
  /** Largest relative difference between two numbers at the same place; 0 when every digit is the same. */
  largest: number;
}

/**
 * Compares published JSON with what was computed again, whatever the order of their keys. Numbers count as the same
 * while their relative difference is at most `tolerance`; the largest one is reported either way.
 */
export function compareJson(published: unknown, computed: unknown, tolerance: number): Compared {
  const compared: Compared = { first: null, largest: 0 };
  walk(published, computed, '', tolerance, compared);
  return compared;
}

function walk(published: unknown, computed: unknown, place: string, tolerance: number, into: Compared): void {
  if (into.first !== null || Object.is(published, computed)) return;
  if (typeof published === 'number' && typeof computed === 'number') {
    const apart = relativeDifference(published, computed);
    into.largest = Math.max(into.largest, apart);
    if (apart <= tolerance) return;
  } else if (Array.isArray(published) && Array.isArray(computed)) {
    if (published.length === computed.length) {
      for (const [index, item] of published.entries())
        walk(item, computed[index], `${place}[${index}]`, tolerance, into);
      return;
    }
    into.first = { place: `${place}.length`, published: published.length, computed: computed.length };
    return;
  } else if (isRecord(published) && isRecord(computed)) {
    for (const key of new Set([...Object.keys(published), ...Object.keys(computed)]))
      walk(published[key], computed[key], place === '' ? key : `${place}.${key}`, tolerance, into);
    return;
  }
  into.first = { place: place || 'the whole', published, computed };
}

function relativeDifference(a: number, b: number): number {
  if (a === b) return 0;
  return Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
