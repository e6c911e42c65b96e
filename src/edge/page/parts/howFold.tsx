import type { ComponentChildren } from 'preact';

/** The physics and statistics behind a place, folded away for those who want them. `within`: in a section that has a head already. */
export function HowFold({ children, within = false }: { children: ComponentChildren; within?: boolean }) {
  return (
    <details class="how">
      <summary>{within ? 'How we know' : <h2>How we know</h2>}</summary>
      {children}
    </details>
  );
}
