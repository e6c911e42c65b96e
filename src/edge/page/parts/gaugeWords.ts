import { isWide } from '../../../findings/measured.ts';
import type { CableFindings } from '../../../findings/schema.ts';
import { noBreak } from '../../../report/words/noBreak.ts';

/** The gauge in the trade's words; `not told` where the area is too wide to name one, null where there is no area. */
export function gaugeWords({ conductor_area: area, effective_gauge_text: text }: CableFindings): string | null {
  if (area !== null && isWide(area)) return 'not told';
  return text === null ? null : noBreak(text);
}
