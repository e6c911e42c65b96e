/** The draft for a maker on paper: two pages for each cable of the invented trial, on both papers. */
import { describe, expect, it } from 'vitest';
import { reportPdf } from '../../../src/edge/publish/pdf.ts';
import { makerDocument } from '../../../src/report/publish/maker/makerDocument.ts';
import { reportTypst } from '../../../src/report/publish/print/reportTypst.ts';
import { TIGHT } from '../../../src/report/publish/print/setting.ts';
import { demoPublished } from '../../support/demoReport.ts';

const demo = demoPublished();
const cables = demo.trial.cables.filter(({ role }) => role !== 'control');
/** Every page of a PDF is an object of this type (ISO 32000-1:2008, 7.7.3.3). */
const pagesOf = (pdf: Uint8Array): number =>
  Buffer.from(pdf)
    .toString('latin1')
    .match(/\/Type\s*\/Page\b(?!s)/g)!.length;

describe.each(['a4', 'letter'] as const)('on %s', (paper) => {
  it.each(cables.map(({ cable }) => cable))('%s has two pages', (cable) => {
    const document = makerDocument(demo, cable, '2026-10-07');
    expect(pagesOf(reportPdf(reportTypst(document, paper), 0))).toBe(2);
  });
});

it('is set in 8.5 pt at least', () => {
  for (const size of [TIGHT.text, TIGHT.tableText, TIGHT.lead, ...TIGHT.heading])
    expect(Number.parseFloat(size)).toBeGreaterThanOrEqual(8.5);
});

it('runs on where more was read', () => {
  const [first] = cables;
  const own = demo.trial.readings.filter(({ cable }) => cable === first!.cable);
  const many = Array.from({ length: 40 }, (_, i) => own.map((r) => ({ ...r, set: `${r.set} ${i}` }))).flat();
  const document = makerDocument({ ...demo, trial: { ...demo.trial, readings: many } }, first!.cable, '2026-10-07');
  expect(pagesOf(reportPdf(reportTypst(document, 'a4'), 0))).toBeGreaterThan(2);
});
