/** The invented trial as it is published, and the same under hostile names. */
import { demoFolder } from '../../src/edge/files/projectRoot.ts';
import { readFolder } from '../../src/edge/files/readFolder.ts';
import { findingsOf } from '../../src/findings/findings.ts';
import type { Findings } from '../../src/findings/schema.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { readPackage } from '../../src/report/package/readPackage.ts';
import { fold } from '../../src/trial/fold.ts';
import type { Trial } from '../../src/trial/trial.ts';

const NOW = '2026-12-01T00:00:00Z';

export interface DemoPublished {
  entries: Entry[];
  trial: Trial;
  findings: Findings;
}

let read: Entry[] | null = null;

/** Entries of the invented trial with weights stated, so that there is an order to publish; read once. */
export function demoEntries(): Entry[] {
  read ??= demoWithWeights();
  return read;
}

function demoWithWeights(): Entry[] {
  const { entries, refusals } = readPackage(readFolder(demoFolder()), { trial: 'demo', now: NOW });
  if (refusals.length > 0) throw new Error('the invented trial was refused');
  const say = (n: number, setting: string, value: string): Entry => ({
    id: `01ffffff-ffff-7fff-bfff-00000000000${n}`,
    trial: entries[0]!.trial,
    kind: 'setting',
    at: NOW,
    by: '',
    device: '',
    body: { setting, value },
  });
  return [...entries, say(1, 'standing_job', 'tight bends'), say(2, 'standing_scale_price', '30 to 4')];
}

export function demoPublished(): DemoPublished {
  return published('as it is', demoEntries);
}

/** The same cables under other makers' names, one after the other. */
export function demoUnderNames(names: readonly string[]): DemoPublished {
  return published(JSON.stringify(names), () => {
    let next = 0;
    return demoEntries().map((entry) => {
      if (entry.kind !== 'cable' || entry.body.role === 'control') return entry;
      const maker = names[next++ % names.length]!;
      return { ...entry, body: { ...entry.body, maker, model: '' } };
    });
  });
}

const made = new Map<string, DemoPublished>();

/** Findings take a second or two, and several tests look at the same. */
function published(key: string, entriesOf: () => Entry[]): DemoPublished {
  const before = made.get(key);
  if (before !== undefined) return before;
  const entries = entriesOf();
  const trial = fold(entries);
  const now = { entries, trial, findings: findingsOf(trial, { draws: 0, standingDraws: 2000 }) };
  made.set(key, now);
  return now;
}
