import { reportDocument } from '../../../report/publish/document/reportDocument.ts';
import { draftOf } from '../../publish/draft.ts';
import { published } from '../../publish/published.ts';
import type { Jobs } from './jobs.ts';

/** Share of cases in which an interval of a draft holds the true value. A sealed part has its own. */
const LEVEL = 0.95;

/**
 * What is published of a trial: a sealed part as it was sealed, or a draft of the places that are chosen.
 *
 * @throws NotPublished where the part's rows are not known here
 */
export function publishJob({ entries, subject, licence, units }: Jobs['publish']['ask']): Jobs['publish']['answer'] {
  const asked = { level: LEVEL, draws: 0 };
  const { part, places } = subject;
  const shown =
    part === null
      ? draftOf(entries, places, asked)
      : published({ entries, sealed: new Map() }, { ...asked, part }, new Date().toISOString());
  return {
    trial: shown.trial,
    findings: shown.findings,
    part: shown.part ?? null,
    document: reportDocument({ ...shown, licence, units }),
  };
}
