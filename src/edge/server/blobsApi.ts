import { createHash } from 'node:crypto';
import { Hono } from 'hono';
import { blobKind } from '../store/blobKind.ts';
import { BlobRefusal, LARGEST_BLOB, type Store } from '../store/store.ts';
import { mayOnly } from './asker.ts';
import type { BenchEnv } from './bench.ts';
import { atMost } from './bodySize.ts';
import type { JournalBook } from './journalBook.ts';
import { namesBlob } from './publish/sealedForReaders.ts';
import { refuse } from './refusal.ts';
import { trialNamed } from './trialNamed.ts';

const SHA_256 = /^[0-9a-f]{64}$/;
/** A name that is made of the content never means anything else. Private: only this device may keep it. */
const KEEP = 'private, max-age=31536000, immutable';

/** Photos and logs of a trial, named by the SHA-256 of their content: `/api/blobs/<sha>?trial=…`. */
export function blobsApi(store: Store, journals: JournalBook): Hono<BenchEnv> {
  const app = new Hono<BenchEnv>();

  app.get('/:sha', mayOnly('read'), async (c) => {
    const trial = await trialNamed(c, store, journals);
    if (trial instanceof Response) return trial;
    const sha = c.req.param('sha');
    const asker = c.get('asker');
    const mayBe =
      SHA_256.test(sha) && (asker.role !== 'reader' || namesBlob((await journals.seenBy(asker, trial)).entries, sha));
    const bytes = mayBe ? await store.getBlob(trial, sha) : null;
    if (bytes === null)
      return refuse(c, 404, {
        found: `the name ${sha.slice(0, 100)}`,
        expected: 'a photo or log that was kept with this trial',
        advice: 'It may still be on the device that took it.',
      });
    const { type, ending } = blobKind(bytes) ?? { type: 'application/octet-stream', ending: 'bin' };
    return c.body(new Uint8Array(bytes), 200, {
      'content-type': type,
      // Shown within the page, but saved and never opened when somebody goes to its address.
      'content-disposition': `attachment; filename="${sha}.${ending}"`,
      // Said outright, so that asking for the head alone tells how large it is.
      'content-length': String(bytes.byteLength),
      'cache-control': KEEP,
    });
  });

  const limit = atMost(LARGEST_BLOB, 'Make the picture smaller.');
  app.put('/:sha', mayOnly('record'), limit, async (c) => {
    const trial = c.req.query('trial') ?? '';
    if (trial.trim() === '' || trial.length > 200)
      return refuse(c, 400, { found: 'no trial', expected: '?trial=…', advice: 'Name the trial.' });
    const bytes = new Uint8Array(await c.req.arrayBuffer());
    const sha = createHash('sha256').update(bytes).digest('hex');
    if (sha !== c.req.param('sha'))
      return refuse(c, 400, {
        found: `content whose SHA-256 is ${sha}`,
        expected: `${c.req.param('sha').slice(0, 100)}, the name it was sent under`,
        advice: 'Nothing was kept; send it again.',
      });
    try {
      await store.putBlob(trial, bytes);
    } catch (error) {
      if (!(error instanceof BlobRefusal)) throw error;
      return refuse(c, 415, {
        found: error.message,
        expected: 'a photo or a plain text log',
        advice: 'Nothing was kept.',
      });
    }
    return c.json({ name: sha, bytes: bytes.byteLength });
  });

  return app;
}
