import type { ReadOutcome } from '../units/reading.ts';

/** Hours only when needed; a fourth part counts frames, whose rate is not stated here. */
const TIMECODE = /^(?:(\d{1,3}):)?(\d{1,3}):(\d{2})(?:\.(\d{1,3})|[:;]\d{2,3})?$/;

/**
 * Reads a place in a recording, `12:31`, `1:02:31.5` or `01:02:31:12`, into seconds from its beginning. Frames are left out:
 * without the rate they are no time.
 */
export function readTimecode(text: string): ReadOutcome<number> {
  const typed = text.trim();
  const match = TIMECODE.exec(typed);
  const [, hours, minutes = '0', seconds = '0', fraction = ''] = match ?? [];
  const sensible = Number(seconds) < 60 && (hours === undefined || Number(minutes) < 60);
  if (!match || !sensible)
    return { ok: false, found: `"${typed}"`, expected: 'a place in a recording, such as 12:31 or 1:02:31' };
  const whole = Number(hours ?? '0') * 3600 + Number(minutes) * 60 + Number(seconds);
  return { ok: true, value: whole + Number(`0.${fraction || '0'}`) };
}
