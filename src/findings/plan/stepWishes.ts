import type { Step } from '../../methods/decide/workMinutes.ts';
import type { StepWish } from '../../methods/decide/workOrder.ts';
import { bendParts, droopsWanted } from './bendActs.ts';
import type { PlannedPiece } from './cablePieces.ts';
import type { PlanSettings } from './settings.ts';

/** What each step is, in the imperative, for the list of work. */
export const STEP_WORDS: Readonly<Record<Step, string>> = {
  ohms: 'Read the ohms of every whole length, before the first cut',
  bend: 'Bend, before anything is cut down',
  cut: 'Cut the other pieces',
  strip: 'Strip the pieces to take apart',
  weigh: 'Weigh whole, conductor and jacket; measure the bare conductor',
  strands: 'Count the strands and measure some',
  eye: 'Scrape a strand bare and look; hold a magnet to the strands',
  wall: 'Measure the wall round a cut face',
  abuse: 'Abuse the jackets',
};

/** The first piece of each cable. */
export function onePerCable(pieces: readonly PlannedPiece[]): PlannedPiece[] {
  const seen = new Set<string>();
  return pieces.filter((p) => {
    if (seen.has(p.cable)) return false;
    seen.add(p.cable);
    return true;
  });
}

/** Which pieces each step is done on, and how often. */
export function stepWishes(pieces: readonly PlannedPiece[], settings: PlanSettings): StepWish[] {
  const { methods, repeats } = settings;
  const of = (...kinds: string[]) => pieces.filter((p) => kinds.includes(p.kind));
  const wish = (step: Step, on: readonly PlannedPiece[], rounds = 1): StepWish[] =>
    on.length > 0 ? [{ step, specimens: on.map((p) => p.specimen), repeats: rounds }] : [];
  const apart = of('apart');
  const acts = bendParts(pieces, settings);
  const bending = (each: StepWish): StepWish[] =>
    acts.length === 0 ? [] : [{ ...each, minutes: acts.reduce((sum, { minutes }) => sum + minutes, 0) }];
  const opened = methods.has('weigh') || methods.has('strands') || methods.has('wall');
  return [
    ...(methods.has('ohms') ? wish('ohms', of('whole'), repeats) : []),
    ...wish('bend', of('bend'), methods.has('bend') ? droopsWanted(settings) : 1).flatMap(bending),
    ...wish('cut', [...(opened ? apart : []), ...of('abuse', 'kept')]),
    ...(methods.has('weigh') || methods.has('strands') ? wish('strip', apart) : []),
    ...(methods.has('weigh') ? wish('weigh', apart, repeats) : []),
    ...(methods.has('strands') ? wish('strands', onePerCable(apart)) : []),
    ...(methods.has('eye') ? wish('eye', onePerCable([...apart, ...of('bend', 'whole')])) : []),
    ...(methods.has('wall') ? wish('wall', onePerCable(apart)) : []),
    ...(methods.has('abuse') ? wish('abuse', of('abuse')) : []),
  ];
}
