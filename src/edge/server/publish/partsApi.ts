import { Hono } from 'hono';
import { isPartName, PART_NAME_RULE } from '../../../journal/partName.ts';
import { photosNamed } from '../../../report/package/photos.ts';
import { licenceOf } from '../../../report/publish/licences.ts';
import { fold } from '../../../trial/fold.ts';
import { placesIn } from '../../../trial/makeParts.ts';
import { mayOnly } from '../asker.ts';
import type { BenchEnv } from '../bench.ts';
import { refuse } from '../refusal.ts';
import { trialNamed } from '../trialNamed.ts';
import type { PublishParts } from './publishApi.ts';

/** Share of cases in which the intervals of a part that is sealed hold the true value. */
const LEVEL = 0.95;

/**
 * Parts: what they hold is computed here and by `cupel verify`, by one program, so that the digits are the same. A browser's last
 * digits differ.
 */
export function partsApi({ store, journals, now }: PublishParts): Hono<BenchEnv> {
  const app = new Hono<BenchEnv>();

  app.get('/parts', mayOnly('read'), async (c) => {
    const trial = await trialNamed(c, store, journals);
    if (trial instanceof Response) return trial;
    const { checkedParts } = await import('../../publish/checkedParts.ts');
    const journal = await journals.seenBy(c.get('asker'), trial);
    return c.json(journal.once('parts', checkedParts));
  });

  app.get('/seal', mayOnly('record'), async (c) => {
    const trial = await trialNamed(c, store, journals);
    if (trial instanceof Response) return trial;
    const word = (name: string) => (c.req.query(name) ?? '').trim();
    const entries = await store.entries(trial);
    const part = word('part');
    if (!isPartName(part))
      return refuse(c, 400, {
        found: part === '' ? 'no name for the part' : `${part.slice(0, 100)} as the name of a part`,
        expected: PART_NAME_RULE,
        advice: 'Nothing was sealed.',
      });
    if (fold(entries).parts.some((each) => each.part === part))
      return refuse(c, 400, {
        found: `part ${part}, which is sealed already`,
        expected: 'a name that no part has yet',
        advice: 'Seal what is new as another part.',
      });
    const { sealRow } = await import('../../../report/publish/seal.ts');
    const places = placesIn(word('places'));
    const asked = { part, title: word('title'), places, hidden: word('hidden') === 'yes', by: word('by') };
    try {
      return c.json(sealRow(entries, { ...asked, level: LEVEL, draws: 0, at: new Date(now()).toISOString() }));
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      return refuse(c, 400, { found: error.message, expected: 'something to seal', advice: 'Nothing was sealed.' });
    }
  });

  app.get('/package', mayOnly('read'), async (c) => {
    const trial = await trialNamed(c, store, journals);
    if (trial instanceof Response) return trial;
    const journal = await journals.seenBy(c.get('asker'), trial);
    const { packageGround, publicPackage } = await import('../../publish/publicPackage.ts');
    const { zipPackage } = await import('../../../report/package/zip.ts');
    const { photosToPack } = await import('../../store/packedPhotos.ts');
    const ground = journal.once('package', packageGround);
    const named = c.req.query('photos') === 'yes' ? photosNamed(ground.trial) : [];
    const { photos } = await photosToPack(named, (name) => store.getBlob(trial, name));
    const files = publicPackage(ground, photos, licenceOf(c.req.query('licence') ?? ''));
    return c.body(new Uint8Array(zipPackage(files)), 200, {
      'content-type': 'application/zip',
      'content-disposition': 'attachment; filename="package.zip"',
    });
  });

  return app;
}
