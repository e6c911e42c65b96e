import type { Entry, EntryKind } from '../../src/journal/entry.ts';

let made = 0;

/** An entry with an id that sorts after every one made before it in this file. */
export function entry(kind: EntryKind | (string & {}), body: Record<string, string>, more: Partial<Entry> = {}): Entry {
  made++;
  const clock = (1_760_000_000_000 + made).toString(16).padStart(12, '0');
  const id = `${clock.slice(0, 8)}-${clock.slice(8)}-7000-8000-${made.toString(16).padStart(12, '0')}`;
  return { id, trial: 'club', kind, at: '2026-10-03T10:00:00.000Z', by: '', device: '', body, ...more };
}

/** One cable with one piece, and a tool. */
export function onePiece(): Entry[] {
  return [
    entry('trial', { trial: 'club', title: 'Club trial', target_temperature: '20', opened_on: '2026-10-03' }),
    entry('cable', { cable: 'quill', maker: 'Quill', model: 'Two', claimed_size: '2 AWG', claimed_metal: 'OFC' }),
    entry('specimen', { specimen: 'q1', cable: 'quill', cut_length: '300', kind: 'apart' }),
    entry('instrument', { instrument: 'scale', kind: 'pocket scale', resolution: '0.01', unit: 'g' }),
  ];
}

/** A reading of piece q1. */
export function reading(id: string, quantity: string, value: string, unit: string, more: Record<string, string> = {}) {
  return entry('reading', { reading: id, specimen: 'q1', quantity, value, unit, ...more });
}
