import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { phone } from '../store/media.ts';
import { DamagedHere } from './damagedHere.tsx';
import { Header } from './header.tsx';
import { KeptWhere } from './keptWhere.tsx';
import { Mark } from './mark.tsx';
import { NotTaken } from './notTaken.tsx';
import { type PlaceOnRuler, Places } from './places.tsx';
import { PutAwayHere } from './putAwayHere.tsx';

interface FrameProps {
  /** What the window is called. */
  title: string;
  places: readonly PlaceOnRuler[];
  trial?: { title: string; place: string };
  /** True once there are figures on the page that units apply to. */
  units?: boolean;
  /** True where a phone has no room for more than the place's name. */
  compact?: boolean;
  children: ComponentChildren;
}

/** What stands round every place: header, ruler of places, the foot. Moves the focus to the place when it changes. */
export function Frame({ title, places, trial, units = false, compact = false, children }: FrameProps) {
  const main = useRef<HTMLElement>(null);
  const here = places.find((place) => place.here)?.href ?? '';
  useEffect(() => {
    document.title = `${title} · Cupel`;
  }, [title]);
  useEffect(() => {
    if (document.activeElement === null || document.activeElement === document.body)
      main.current?.focus({ preventScroll: true });
  }, [here]);
  return (
    <>
      <a class="skip" href="#main">
        To the content
      </a>
      {compact && phone.value ? (
        <CompactHead places={places} />
      ) : (
        <>
          <Header trial={trial} units={units} />
          <Places places={places} />
        </>
      )}
      <main id="main" ref={main} tabIndex={-1}>
        <DamagedHere />
        <NotTaken />
        {places.length > 1 && <PutAwayHere />}
        {children}
      </main>
      <footer class="foot">
        <p>
          Findings speak of the pieces measured, with 95 % intervals. Work on live wiring belongs to licensed people
          under your local code.
        </p>
        <p>Cupel: what is inside, against the label.</p>
      </footer>
    </>
  );
}

/** On a phone: the mark and the place's name, which opens the list of places, and where the entries are. */
function CompactHead({ places }: { places: readonly PlaceOnRuler[] }) {
  return (
    <header class="compact-head">
      <details class="places-fold">
        <summary>
          <Mark />
          {places.find((place) => place.here)?.name ?? 'Cupel'}
          <svg class="opens" width="16" height="16" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
            <path d="M2 4h12M2 8h12M2 12h12" stroke="var(--ink)" stroke-width="2" />
          </svg>
          <span class="hidden">, all places</span>
        </summary>
        <Places places={places} />
      </details>
      <KeptWhere />
    </header>
  );
}
