import type { FurtherFigures } from './prepare.ts';

/** Figures of the other parts of the findings that cables may be ordered by. */
export function furtherFigures(): FurtherFigures {
  return { endurance: [], current: new Map() };
}
