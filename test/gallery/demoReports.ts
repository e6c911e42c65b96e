/** The invented trial as it is shown to the world: reports as text, the draft for a maker, and cards of its first part. */
import { published } from '../../src/edge/publish/published.ts';
import { type CardWish, cardSvg } from '../../src/report/publish/cards/card.ts';
import type { ReportDocument } from '../../src/report/publish/document/blocks.ts';
import { reportDocument } from '../../src/report/publish/document/reportDocument.ts';
import { reportHtml } from '../../src/report/publish/html/reportHtml.ts';
import { makerDocument } from '../../src/report/publish/maker/makerDocument.ts';
import { demoEntries, demoPublished } from '../support/demoReport.ts';
import { textOfHtml } from './reportText.ts';

const NOW = '2026-12-01T00:00:00Z';
/** The day on which the invented club asked. */
const ASKED = '2026-10-07';

const part = (name: string) => {
  const shown = published({ entries: demoEntries(), sealed: new Map() }, { part: name, level: 0.95, draws: 0 }, NOW);
  return { ...shown, part: shown.part ?? null };
};

/** File name → the document that is set both as a page and for print. */
export const DEMO_DOCUMENTS: Readonly<Record<string, () => ReportDocument>> = {
  'report-whole.txt': () => reportDocument(demoPublished()),
  'report-part-1.txt': () => reportDocument(part('1')),
  'report-part-2.txt': () => reportDocument(part('2')),
  'maker-draft.txt': () => makerDocument(demoPublished(), 'quill', ASKED),
};

const card = (wish: Partial<CardWish>): string =>
  cardSvg(
    part('1'),
    { kind: 'one', about: 'inside', cables: [], ...wish },
    { size: '1920x1080', dark: false, transparent: false },
  );

/** File name → content. */
export const DEMO_PICTURES: Readonly<Record<string, () => string>> = {
  ...Object.fromEntries(
    Object.entries(DEMO_DOCUMENTS).map(([name, document]) => [name, () => textOfHtml(reportHtml(document()))]),
  ),
  'card-demo-one.svg': () => card({ cables: ['tollgate'] }),
  'card-demo-two.svg': () => card({ kind: 'two', cables: ['brackenfell', 'saltmarsh'] }),
  'card-demo-field.svg': () => card({ kind: 'field' }),
  'card-demo-order.svg': () => card({ kind: 'order' }),
  'card-demo-lower-third.svg': () => card({ kind: 'lower-third', cables: ['quill'] }),
};
