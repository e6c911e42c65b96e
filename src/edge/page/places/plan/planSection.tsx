import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { phone } from '../../store/media.ts';

interface PlanSectionProps {
  /** The id of its heading, which links on the page lead to. */
  id: string;
  class: string;
  title: string;
  /** How far it is, in a few words. */
  state: string;
  /** True where it is what comes next. */
  next?: boolean;
  children: ComponentChildren;
}

/** A section of the plan. On a phone it is folded, with its state in sight, and open where it is what comes next. */
export function PlanSection({ id, class: name, title, state, next = false, children }: PlanSectionProps) {
  // At first only: it does not fold away under somebody's hands when its work is done.
  const [open] = useState(next);
  if (!phone.value)
    return (
      <section class={name} aria-labelledby={id}>
        <h2 id={id}>{title}</h2>
        {children}
      </section>
    );
  return (
    <details class={`plan-fold ${name}`} open={open}>
      <summary>
        <h2 id={id}>{title}</h2>
        {state !== '' && <span class="note">{state}</span>}
      </summary>
      {children}
    </details>
  );
}
