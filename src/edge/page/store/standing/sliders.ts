import type { Shares } from './shares.ts';

/** What one slider moves: a criterion, or all endurance tests together. */
export interface Slider {
  id: string;
  name: string;
  members: string[];
  share: number;
}

interface Named {
  id: string;
  name: string;
}

const ENDURANCE = 'endurance:';
/** So many stand open; the rest is behind one door. */
const OPEN = 4;

/** One slider for each criterion; tests of endurance go together where there are several. */
export function slidersOf(criteria: readonly Named[], shares: Shares): Slider[] {
  const tests = criteria.filter(({ id }) => id.startsWith(ENDURANCE));
  const sliders = criteria.map(({ id, name }): Slider => ({ id, name, members: [id], share: shares.get(id) ?? 0 }));
  if (tests.length < 2) return sliders;
  const together: Slider = {
    id: 'endurance',
    name: `Endurance, ${tests.length} tests together`,
    members: tests.map(({ id }) => id),
    share: tests.reduce((sum, { id }) => sum + (shares.get(id) ?? 0), 0),
  };
  const first = sliders.findIndex(({ id }) => id.startsWith(ENDURANCE));
  return sliders.flatMap((slider, at) => {
    if (!slider.id.startsWith(ENDURANCE)) return [slider];
    return at === first ? [together] : [];
  });
}

/** Which sliders stand open: everything that weighs something, and at least four, the weightiest first. */
export function openSliders(sliders: readonly Slider[]): string[] {
  const weighty = [...sliders].sort((a, b) => b.share - a.share);
  const counting = weighty.filter(({ share }) => share > 0).length;
  return weighty.slice(0, Math.max(OPEN, Math.min(counting, OPEN + 1))).map(({ id }) => id);
}
