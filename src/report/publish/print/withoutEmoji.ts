import { graphemes } from '../../text/displayWidth.ts';

const EMOJI = /\p{Emoji_Presentation}|\p{Extended_Pictographic}|\p{Regional_Indicator}|[#*0-9]\uFE0F?\u20E3/u;
/** Signs that count as emoji but stand in text fonts: ©, ®, ™, ‼, ⁉ and arrows. */
const IN_TEXT_FONTS = /^[\u00a9\u00ae\u2122\u203c\u2049\u2190-\u21ff]$/u;
const KEYCAP = /^[#*0-9]/;
/** What stands for a text that holds nothing else. */
const NOTHING_LEFT = '•';

/**
 * A text for print without emoji: the fonts of a report hold none, and an empty box would stand for each. A keycap keeps its
 * digit; a text of emoji alone becomes a dot, so that something stands where a name was.
 *
 * @example withoutEmoji('boot 🔥 run') // 'boot run'
 */
export function withoutEmoji(typed: string): string {
  if (!EMOJI.test(typed)) return typed;
  const kept = graphemes(typed).map((sign) => {
    if (!EMOJI.test(sign) || IN_TEXT_FONTS.test(sign)) return sign;
    return KEYCAP.test(sign) ? sign.charAt(0) : '';
  });
  // Where one was left out between two spaces, one of them goes with it.
  const text = kept.filter((sign, i) => sign !== ' ' || kept[i - 1] !== '' || kept[i - 2] !== ' ').join('');
  return text.trim() === '' ? NOTHING_LEFT : text;
}
