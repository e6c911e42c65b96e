import type { Entry } from '../../../journal/entry.ts';
import { placesIn } from '../../../trial/makeParts.ts';
import { draftOf } from '../../publish/draft.ts';
import { NotPublished, type Published, published } from '../../publish/published.ts';
import type { Store } from '../../store/store.ts';
import type { Asker } from '../asker.ts';

export interface PublishedNow extends Published {
  /** s since 1970: the date of a file made of it. */
  made: number;
}

/** Share of cases in which an interval of a draft holds the true value. A sealed part has its own. */
const LEVEL = 0.95;
/** Findings that are kept between requests: a batch of cards asks for the same ones sixty times. */
const MOST_KEPT = 4;

/**
 * Answers what is published of a trial: a sealed part, or a draft of some places, and remembers the last few until the journal
 * grows. Readers get sealed parts that are not hidden.
 */
export function publishedBook(store: Store) {
  const kept = new Map<string, PublishedNow>();
  return async (
    trial: string,
    { part, places }: { part: string; places: string },
    asker: Asker,
  ): Promise<PublishedNow> => {
    const entries = await store.entries(trial);
    if (asker.role === 'reader') refuseUnsealed(entries, part);
    const key = JSON.stringify([trial, part, places, entries.length, entries.at(-1)?.id]);
    const found = kept.get(key) ?? computed(entries, part, places);
    kept.delete(key);
    kept.set(key, found);
    if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value as string);
    return found;
  };
}

function computed(entries: readonly Entry[], part: string, places: string): PublishedNow {
  const asked = { level: LEVEL, draws: 0 } as const;
  const chosen = placesIn(places);
  const shown =
    part === '' && chosen.length > 0
      ? draftOf(entries, chosen, asked)
      : published({ entries, sealed: new Map() }, { ...asked, ...(part === '' ? {} : { part }) }, NO_MOMENT);
  const last = entries.reduce((latest, { at }) => Math.max(latest, Date.parse(at) || 0), 0);
  return { ...shown, made: Math.floor((Date.parse(shown.part?.at ?? '') || last) / 1000) };
}

/** No package is read here, so no moment of reading is needed. */
const NO_MOMENT = '1970-01-01T00:00:00Z';

function refuseUnsealed(entries: readonly Entry[], part: string): void {
  const seals = entries.filter(({ kind, body }) => kind === 'seal' && (body.part ?? '').trim() === part);
  if (part !== '' && seals.length > 0 && (seals.at(-1)!.body.hidden ?? '').trim().toLowerCase() !== 'yes') return;
  throw new NotPublished(
    part === '' ? 'Readers see sealed parts only; name one.' : `No part ${part} is there for readers.`,
  );
}
