import type { Entry } from '../../../journal/entry.ts';
import { blobName } from '../blobName.ts';
import { refuseLargeBlob, refuseStrangers } from '../refuse.ts';
import type { Store } from '../store.ts';
import { byOpening, LINE_KINDS, trialLine } from '../trialLine.ts';

/** A store that forgets everything when it is closed: for tests, and for trying the bench without leaving a file. */
export function openMemoryStore(): Store {
  const journals = new Map<string, Map<string, Entry>>();
  const blobs = new Map<string, Uint8Array>();
  const sorted = (trial: string) => [...(journals.get(trial)?.values() ?? [])].sort((a, b) => (a.id < b.id ? -1 : 1));
  const isLineKind = (entry: Entry) => (LINE_KINDS as readonly string[]).includes(entry.kind);

  return {
    async append(trial, entries) {
      refuseStrangers(trial, entries);
      if (entries.length === 0) return { added: 0, known: 0 };
      const journal = journals.get(trial) ?? new Map<string, Entry>();
      journals.set(trial, journal);
      const before = journal.size;
      for (const entry of entries) if (!journal.has(entry.id)) journal.set(entry.id, entry);
      const added = journal.size - before;
      return { added, known: entries.length - added };
    },
    async entries(trial, after = '', limit = Number.POSITIVE_INFINITY) {
      return sorted(trial)
        .filter((entry) => entry.id > after)
        .slice(0, limit);
    },
    async trials() {
      const lines = [...journals].map(([trial, journal]) =>
        trialLine(trial, sorted(trial).filter(isLineKind), journal.size),
      );
      return lines.sort(byOpening);
    },
    async has(trial) {
      return journals.has(trial);
    },
    async putBlob(trial, bytes) {
      refuseLargeBlob(bytes);
      const name = blobName(bytes);
      blobs.set(`${trial}\0${name}`, bytes.slice());
      return name;
    },
    async getBlob(trial, name) {
      return blobs.get(`${trial}\0${name}`)?.slice() ?? null;
    },
    async close() {
      journals.clear();
      blobs.clear();
    },
  };
}
