import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { folded, openJournal } from '../store/journal/journal.ts';
import type { Route } from '../store/routeOf.ts';
import { Frame } from './frame.tsx';
import { trialPlaces } from './trialPlaces.ts';

interface JournalFrameProps {
  trial: string;
  place: Route['place'];
  /** What is done here. */
  name: string;
  children: ComponentChildren;
}

/** The frame of a place where something is recorded: the journal is followed, and nothing is computed. */
export function JournalFrame({ trial, place, name, children }: JournalFrameProps) {
  useEffect(() => void openJournal(trial), [trial]);
  const now = folded.value?.trial === trial ? folded.value : null;
  const title = now?.title || trial;
  return (
    <Frame
      title={`${name}, ${title}`}
      places={trialPlaces(trial, place)}
      trial={{ title, place: now?.place ?? '' }}
      compact
    >
      {children}
    </Frame>
  );
}
