import type { Entry } from '../../../journal/entry.ts';

/** One reading exactly as it was typed, and whether it counts. */
export interface TypedReading {
  reading: string;
  specimen: string;
  quantity: string;
  /** Value and unit as typed. */
  typed: string;
  /** Instrument, copper temperature and contact distance, as far as they were typed. */
  circumstances: string;
  by: string;
  standing: 'counted' | 'struck' | 'replaced';
  why: string;
}

/**
 * All readings of a cable as they were typed, struck and replaced ones among them: the raw side of the findings, for
 * whoever wants to look. `entries` are in the order of their ids, so that a later row corrects an earlier one.
 */
export function typedReadings(entries: readonly Entry[], cable: string): TypedReading[] {
  const ordered = [...entries].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const specimens = new Map<string, string>();
  const rows = new Map<string, Entry['body']>();
  const struck = new Map<string, string>();
  const replaced = new Map<string, string>();
  for (const { kind, body } of ordered) {
    if (kind === 'specimen') specimens.set(body.specimen ?? '', body.cable ?? '');
    if (kind === 'strike') struck.set(body.reading ?? '', body.why ?? '');
    if (kind === 'reading') rows.set(body.reading ?? '', body);
  }
  for (const body of rows.values()) {
    if ((body.replaces ?? '') !== '') replaced.set(body.replaces ?? '', body.why ?? '');
  }
  return [...rows.values()]
    .filter((body) => specimens.get(body.specimen ?? '') === cable)
    .map((body) => typedReading(body, struck, replaced));
}

function typedReading(body: Entry['body'], struck: Map<string, string>, replaced: Map<string, string>): TypedReading {
  const reading = body.reading ?? '';
  const standing = struck.has(reading) ? 'struck' : replaced.has(reading) ? 'replaced' : 'counted';
  const over = joined(body.at_length, body.at_length_unit);
  const warm = joined(body.temperature, body.temperature_unit);
  return {
    reading,
    specimen: body.specimen ?? '',
    quantity: (body.quantity ?? '').replaceAll('_', ' '),
    typed: joined(body.value, body.unit),
    circumstances: [body.instrument ?? '', over && `over ${over}`, warm && `at ${warm}`, body.position ?? '']
      .filter((word) => word !== '')
      .join(', '),
    by: body.by ?? '',
    standing,
    why: struck.get(reading) ?? replaced.get(reading) ?? '',
  };
}

const joined = (value = '', unit = '') => (value === '' ? '' : `${value} ${unit}`.trim());
