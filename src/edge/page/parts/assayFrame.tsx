import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { type Assay, assay, followTrial } from '../store/assay.ts';
import type { Route } from '../store/routeOf.ts';
import { Frame } from './frame.tsx';
import { trialPlaces } from './trialPlaces.ts';

/** Follows a trial's journal and what is computed from it, for as long as the place is shown; null until it is open. */
export function useAssay(trial: string): Assay | null {
  useEffect(() => followTrial(trial), [trial]);
  return assay.value?.trial === trial ? assay.value : null;
}

/** Brings the open sheet into view once, when `there` turns true, unless somebody has scrolled already. */
export function useOpenSheetInView(there: boolean, selector: string): void {
  useEffect(() => {
    if (there && scrollY === 0) document.querySelector(selector)?.scrollIntoView({ block: 'nearest' });
  }, [there]);
}

interface AssayFrameProps {
  trial: string;
  now: Assay | null;
  place: Route['place'];
  /** What stands before the trial's title in the window's name; none where empty. */
  name: string;
  units?: boolean;
  compact?: boolean;
  children: ComponentChildren;
}

/** The frame of a place that shows what follows from a trial's readings. */
export function AssayFrame({ trial, now, place, name, units = true, compact = true, children }: AssayFrameProps) {
  const title = now?.findings?.title || trial;
  return (
    <Frame
      title={name === '' ? title : `${name}, ${title}`}
      places={trialPlaces(trial, place)}
      trial={now?.stage === 'failed' ? undefined : { title, place: now?.place ?? '' }}
      units={units}
      compact={compact}
    >
      {children}
    </Frame>
  );
}
