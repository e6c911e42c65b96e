import type { Entry } from '../../../journal/entry.ts';
import { blobName } from '../blobName.ts';
import { refuseStrangers, refuseUnfitBlob } from '../refuse.ts';
import type { Store } from '../store.ts';
import { byOpening, LINE_KINDS, trialLine } from '../trialLine.ts';
import { memoryDevices } from './devices.ts';

/** A store that forgets everything when it is closed: for tests, and for trying the bench without leaving a file. */
export function openMemoryStore(): Store {
  // A map keeps the order in which its keys were added: the order of arrival.
  const journals = new Map<string, Map<string, Entry>>();
  const blobs = new Map<string, Map<string, Uint8Array>>();
  let name = crypto.randomUUID();
  const arrived = (trial: string) => [...(journals.get(trial)?.values() ?? [])];
  const sorted = (trial: string) => arrived(trial).sort((a, b) => (a.id < b.id ? -1 : 1));
  const since = (trial: string, seq: number, limit = Number.POSITIVE_INFINITY) => {
    const entries = arrived(trial).slice(seq, seq + limit);
    return { entries, next: seq + entries.length };
  };
  const isLineKind = (entry: Entry) => (LINE_KINDS as readonly string[]).includes(entry.kind);

  return {
    ...memoryDevices(),
    async append(trial, entries) {
      refuseStrangers(trial, entries);
      const journal = journals.get(trial) ?? new Map<string, Entry>();
      if (entries.length > 0) journals.set(trial, journal);
      const before = journal.size;
      for (const entry of entries) if (!journal.has(entry.id)) journal.set(entry.id, entry);
      const added = journal.size - before;
      return { added, known: entries.length - added, last: journal.size };
    },
    async entries(trial, after = '', limit = Number.POSITIVE_INFINITY) {
      return sorted(trial)
        .filter((entry) => entry.id > after)
        .slice(0, limit);
    },
    entriesSince: async (trial, seq, limit) => since(trial, seq, limit),
    readable: async (trial, seq, limit) => ({ ...since(trial, seq, limit), damaged: [], advice: '' }),
    async heldIds(trial, ids) {
      return new Set(ids.filter((id) => journals.get(trial)?.has(id)));
    },
    async trials() {
      const lines = [...journals].map(([trial, journal]) =>
        trialLine(trial, sorted(trial).filter(isLineKind), journal.size),
      );
      return lines.sort(byOpening);
    },
    async trialNames() {
      const names = [...new Set([...journals.keys(), ...blobs.keys()])];
      return names.sort((a, b) => Buffer.compare(Buffer.from(a), Buffer.from(b)));
    },
    async has(trial) {
      return journals.has(trial);
    },
    async putBlob(trial, bytes) {
      refuseUnfitBlob(bytes);
      const blob = blobName(bytes);
      const kept = blobs.get(trial) ?? new Map<string, Uint8Array>();
      blobs.set(trial, kept.set(blob, bytes.slice()));
      return blob;
    },
    async getBlob(trial, blob) {
      return blobs.get(trial)?.get(blob)?.slice() ?? null;
    },
    blobNames: async (trial) => [...(blobs.get(trial)?.keys() ?? [])].sort(),
    name: async () => name,
    async rename() {
      name = crypto.randomUUID();
    },
    async close() {
      journals.clear();
      blobs.clear();
    },
  };
}
