import { sealRow } from '../../../report/publish/seal.ts';
import type { Jobs } from './jobs.ts';

/** What is to be sealed to the row that does. @throws RangeError with half a sentence, as `sealRow` */
export function sealJob({ entries, asked }: Jobs['seal']['ask']): Record<string, string> {
  return sealRow(entries, asked);
}
