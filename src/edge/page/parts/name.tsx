/** Letters, marks and figures that Besley has: Latin with its accents, and common punctuation. */
const SET_IN_BESLEY = /^[\u0020-\u024f\u2010-\u2027\u2030-\u203a\u20ac\u2122]*$/u;

/** Names longer than this are set smaller, so that a whole one still leaves room for the rest. */
const LONG = 48;

/**
 * A name that somebody gave: shown as text, in its own direction, never cut off. Besley where it has every letter; else
 * the whole name in the sans, so that no word changes its face half-way.
 */
export function Name({ children }: { children: string }) {
  const face = SET_IN_BESLEY.test(children) && children.length <= LONG ? 'name' : 'name plain';
  return (
    <bdi class={children.length > LONG ? `${face} long` : face} dir="auto">
      {children}
    </bdi>
  );
}
