/** The invented trial as it is published, and the same under hostile names. */
import { demoFiles } from '../../demo/make/demoTrial.ts';
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
function demoEntries(): Entry[] {
  read ??= demoWithWeights();
  return read;
}

function demoWithWeights(): Entry[] {
  const bytes = [...demoFiles()].map(([name, text]): [string, Uint8Array] => [name, new TextEncoder().encode(text)]);
  const { entries, refusals } = readPackage(new Map(bytes), { trial: 'demo', now: NOW });
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
  const entries = demoEntries();
  const trial = fold(entries);
  return { entries, trial, findings: findingsOf(trial, { draws: 0, standingDraws: 2000 }) };
}

/** The same cables under other makers' names, one after the other. */
export function demoUnderNames(names: readonly string[]): DemoPublished {
  let next = 0;
  const entries = demoEntries().map((entry) => {
    if (entry.kind !== 'cable' || entry.body.role === 'control') return entry;
    const maker = names[next++ % names.length]!;
    return { ...entry, body: { ...entry.body, maker, model: '' } };
  });
  const trial = fold(entries);
  return { entries, trial, findings: findingsOf(trial, { draws: 0, standingDraws: 2000 }) };
}
