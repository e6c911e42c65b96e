/** How the invented cables really bend. Like `truths.ts`, these figures are in no file of the package. */
export interface BendTruth {
  /** N m², drooping under its own weight at 20 °C. */
  stiffness: number;
  /** rad: turn of the piece by itself over the overhang; positive droops with the first face up. */
  set: number;
  /** What a first push in a straight piece meets over that: strands still stuck to each other. */
  stuck: number;
}

export const BEND_TRUTHS: Readonly<Record<string, BendTruth>> = {
  brackenfell: { stiffness: 0.047, set: 0.06, stuck: 1.25 },
  'nine-elms': { stiffness: 0.036, set: -0.05, stuck: 1.15 },
  tollgate: { stiffness: 0.05, set: 0.14, stuck: 1.3 },
  'harrow-sedge': { stiffness: 0.048, set: 0.08, stuck: 1.25 },
  quill: { stiffness: 0.11, set: -0.12, stuck: 1.2 },
  saltmarsh: { stiffness: 0.082, set: 0.18, stuck: 1.35 },
};
