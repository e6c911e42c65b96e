import { Hono } from 'hono';
import { ABOUTS, type About } from '../../../report/publish/cards/aspects.ts';
import { CARD_SIZES, type CardSize } from '../../../report/publish/cards/canvas.ts';
import { CARD_KINDS, type CardKind, cardSvg, NoCard } from '../../../report/publish/cards/card.ts';
import { reportDocument } from '../../../report/publish/document/reportDocument.ts';
import { licenceOf } from '../../../report/publish/licences.ts';
import { makerDocument } from '../../../report/publish/maker/makerDocument.ts';
import { NotPublished } from '../../publish/published.ts';
import type { Store } from '../../store/store.ts';
import { mayOnly } from '../asker.ts';
import type { BenchContext, BenchEnv } from '../bench.ts';
import type { JournalBook } from '../journalBook.ts';
import { refuse } from '../refusal.ts';
import { trialNamed } from '../trialNamed.ts';
import { type PublishedNow, publishedFor } from './publishedFor.ts';

export interface PublishParts {
  store: Store;
  journals: JournalBook;
  now: () => number;
}

/** Reports and cards as files: `GET /report` as .html or .pdf, `GET /card` as .png or .svg. What draws them is loaded when first asked for. */
export function publishApi({ store, journals, now }: PublishParts): Hono<BenchEnv> {
  const app = new Hono<BenchEnv>();

  const shown = async (c: BenchContext): Promise<PublishedNow | Response> => {
    const trial = await trialNamed(c, store, journals);
    if (trial instanceof Response) return trial;
    try {
      const asked = { part: c.req.query('part') ?? '', places: c.req.query('places') ?? '' };
      const asker = c.get('asker');
      return publishedFor(await journals.seenBy(asker, trial), asked, asker);
    } catch (error) {
      if (!(error instanceof NotPublished)) throw error;
      return refuse(c, 404, { found: 'nothing of that', expected: 'a part that is there', advice: error.message });
    }
  };

  app.get('/report', mayOnly('read'), async (c) => {
    const form = c.req.query('form') ?? 'html';
    if (form !== 'html' && form !== 'pdf') return wrong(c, 'form', form, 'html or pdf');
    const paper = c.req.query('paper') ?? 'a4';
    if (paper !== 'a4' && paper !== 'letter') return wrong(c, 'paper', paper, 'a4 or letter');
    const found = await shown(c);
    if (found instanceof Response) return found;
    const cable = c.req.query('cable') ?? '';
    if (cable !== '' && c.get('asker').role === 'reader')
      return refuse(c, 403, {
        found: 'a reader',
        expected: 'a recorder or keeper',
        advice: 'Drafts are not published.',
      });
    if (cable !== '' && !found.findings.cables.some((one) => one.cable === cable))
      return refuse(c, 404, { found: 'no such cable', expected: 'a cable of this trial', advice: 'Name another.' });
    const licence = licenceOf(c.req.query('licence') ?? '');
    const document =
      cable === ''
        ? reportDocument({ ...found, licence })
        : makerDocument(found, cable, new Date(now()).toISOString().slice(0, 10));
    if (form === 'html') {
      const { reportHtml } = await import('../../../report/publish/html/reportHtml.ts');
      const { embeddedFonts } = await import('../../publish/fonts.ts');
      return file(c, reportHtml(document, { fonts: embeddedFonts() }), 'text/html; charset=utf-8', 'report.html');
    }
    const { reportTypst } = await import('../../../report/publish/print/reportTypst.ts');
    const { reportPdf } = await import('../../publish/pdf.ts');
    return file(c, reportPdf(reportTypst(document, paper), found.made), 'application/pdf', 'report.pdf');
  });

  app.get('/card', mayOnly('read'), async (c) => {
    const q = (name: string, usual: string) => c.req.query(name) ?? usual;
    const [kind, about, size, form] = [
      q('kind', 'one'),
      q('about', 'inside'),
      q('size', '1920x1080'),
      q('form', 'png'),
    ];
    if (!among(CARD_KINDS, kind)) return wrong(c, 'kind', kind, CARD_KINDS.join(', '));
    if (!among(ABOUTS, about)) return wrong(c, 'about', about, ABOUTS.join(', '));
    if (!among(CARD_SIZES, size)) return wrong(c, 'size', size, CARD_SIZES.join(', '));
    if (form !== 'png' && form !== 'svg') return wrong(c, 'form', form, 'png or svg');
    const step = q('step', '');
    if (!/^[1-4]?$/.test(step)) return wrong(c, 'step', step, '1, 2, 3 or 4');
    const found = await shown(c);
    if (found instanceof Response) return found;
    const wish = {
      kind: kind as CardKind,
      about: about as About,
      cables: c.req.queries('cable') ?? [],
      method: c.req.query('method'),
      step: step === '' ? undefined : Number(step),
    };
    const look = { size: size as CardSize, dark: q('dark', '') === 'yes', transparent: q('transparent', '') === 'yes' };
    try {
      const svg = cardSvg({ ...found, part: found.part ?? null }, wish, look);
      if (form === 'svg') return file(c, svg, 'image/svg+xml', 'card.svg');
      const { cardPng } = await import('../../publish/png.ts');
      return file(c, cardPng(svg), 'image/png', 'card.png');
    } catch (error) {
      if (!(error instanceof NoCard)) throw error;
      return refuse(c, 400, { found: 'no such card', expected: 'a card of this trial', advice: error.message });
    }
  });

  return app;
}

const among = (known: readonly string[], word: string): boolean => known.includes(word);

const wrong = (c: BenchContext, name: string, found: string, expected: string): Response =>
  refuse(c, 400, { found: `${name}=${found.slice(0, 100)}`, expected, advice: 'Correct the address.' });

/** Saved and never opened when somebody goes to its address: it may hold what people typed. */
function file(c: BenchContext, content: string | Uint8Array, type: string, name: string): Response {
  const body = typeof content === 'string' ? content : new Uint8Array(content);
  return c.body(body, 200, { 'content-type': type, 'content-disposition': `attachment; filename="${name}"` });
}
