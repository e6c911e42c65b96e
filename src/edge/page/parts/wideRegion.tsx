import type { ComponentChildren } from 'preact';

/** A table that may be wider than a phone: it scrolls by itself, by keyboard too, and is announced by its name. */
export function WideRegion({ name, children }: { name: string; children: ComponentChildren }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached without a pointer
    <section class="wide" aria-label={name} tabIndex={0}>
      {children}
    </section>
  );
}
