import type { ReportDocument } from '../../../../report/publish/document/blocks.ts';
import { reportHtml } from '../../../../report/publish/html/reportHtml.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { handOver } from './files.ts';
import { pageFonts } from './pageFonts.ts';

/** Makes a report into one file here, as it is looked at, and hands it over; answers a sentence on what came of it. */
export async function saveWebPage(document: ReportDocument, name: string): Promise<string> {
  try {
    const html = reportHtml(document, { fonts: await pageFonts('report') });
    handOver(new Blob([html], { type: 'text/html' }), name);
    return `${name} is among your downloads.`;
  } catch (error) {
    return sentenceOf(error);
  }
}
