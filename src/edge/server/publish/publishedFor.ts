import type { Entry } from '../../../journal/entry.ts';
import { placesIn } from '../../../trial/makeParts.ts';
import { draftOf } from '../../publish/draft.ts';
import { NotPublished, type Published, published } from '../../publish/published.ts';
import type { Asker } from '../asker.ts';
import type { JournalNow } from '../journalBook.ts';

export interface PublishedNow extends Published {
  /** s since 1970: the date of a file made of it. */
  made: number;
}

/** Share of cases in which an interval of a draft holds the true value. A sealed part has its own. */
const LEVEL = 0.95;

/**
 * What is published of a trial: a sealed part, or a draft of some places; computed once for each state of the journal. Readers get
 * sealed parts only, and of a journal that holds nothing else.
 */
export function publishedFor(
  journal: JournalNow,
  { part, places }: { part: string; places: string },
  { role }: Asker,
): PublishedNow {
  if (role === 'reader' && part === '') throw new NotPublished('Readers see sealed parts only; name one.');
  return journal.once(JSON.stringify(['published', part, places]), (entries) => computed(entries, part, places));
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
