import { NotPublished, type PublishAsked, type Published, published } from '../publish/published.ts';
import { EXIT, Failure } from './failure.ts';
import { journalOf } from './journalOf.ts';

/** What is published of a package or a trial on the shelf, and the second of its last entry: the date of the file. */
export async function publishedOf(named: string, asked: PublishAsked): Promise<Published & { made: number }> {
  const found = await journalOf(named);
  if (found.entries.length === 0) throw new Failure(`${named} holds nothing to write.`, EXIT.dataSaysNo);
  try {
    const shown = published(found, asked, new Date().toISOString());
    const last = Math.max(0, ...found.entries.map(({ at }) => Date.parse(at)));
    return { ...shown, made: Math.floor((Date.parse(shown.part?.at ?? '') || last) / 1000) };
  } catch (error) {
    if (error instanceof NotPublished) throw new Failure(error.message, EXIT.dataSaysNo);
    throw error;
  }
}
