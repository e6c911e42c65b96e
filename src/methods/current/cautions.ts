/**
 * What to heed, beside the step that it concerns. Data, so that page, print and terminal say the same. Common practice of the
 * trade and of workshops, no source; local rules come first.
 */
export type CurrentStep = 'four-wire' | 'heating test' | 'run check' | 'fuse' | 'terminals' | 'clad aluminium';

export interface Caution {
  step: CurrentStep;
  text: string;
}

/** The line that goes with every carrying current and every run check, on page, card and paper. */
export const ESTIMATE_LINE = 'An estimate: fuse at the source by the rule you work under; terminals are not judged.';

/** m: a shorter piece heats or cools from its clamps and lugs. Common practice, no source. */
export const SHORTEST_TO_HEAT = 0.5;

export const CAUTIONS: readonly Caution[] = [
  {
    step: 'four-wire',
    text: 'Clamp the current round all strands at both ends, and take the voltage inside those clamps, half again as far in as the bundle is round.',
  },
  {
    step: 'four-wire',
    text: 'Take every current both ways round and keep it short: a long test warms the wire that it measures.',
  },
  {
    step: 'heating test',
    text: 'Put a fuse of its own in the test circuit, at the battery, and a switch within reach that breaks the full current.',
  },
  {
    step: 'heating test',
    text: 'Choose the temperature at which you stop before you start. The page sounds then; it does not switch off.',
  },
  {
    step: 'heating test',
    text: 'Lay the cable straight, never coiled, with nothing that burns beneath; stay with it, and do not test alone.',
  },
  {
    step: 'heating test',
    text: 'Keep the room steady and let it run until nothing has moved for as long as it took to warm: a slow part that looks like drift is not seen in a short log.',
  },
  {
    step: 'heating test',
    text: 'Take rings and watch off. Lugs and clamps stay hot after the current is off.',
  },
  {
    step: 'heating test',
    text: 'Lead batteries give off hydrogen while they charge: let air through. Lithium batteries need their own protection in the circuit.',
  },
  {
    step: 'heating test',
    text: 'Never take the current from opened mains equipment.',
  },
  {
    step: 'run check',
    text: 'Still air and a horizontal run are supposed; a warm engine bay, sun or a closed channel takes more off than the figure shows.',
  },
  {
    step: 'run check',
    text: 'Vibration, chafing and heat sources decide where a cable may lie: local codes and the maker of the vehicle come first, and some work needs a licence.',
  },
  {
    step: 'fuse',
    text: 'How near the source the fuse must sit differs by trade and country; take the distance from the rule you work under.',
  },
  {
    step: 'fuse',
    text: 'The fuse must also be able to break the short circuit of its battery: its sheet says how much, in kiloamperes.',
  },
  {
    step: 'terminals',
    text: 'A poor crimp makes more heat than any metre of this cable. Pull on it, and feel it after an hour of load.',
  },
  {
    step: 'clad aluminium',
    text: 'Clad aluminium needs lugs made for it; under set screws it creeps and works loose, and it corrodes where it is damp.',
  },
];

export const cautionsFor = (...steps: readonly CurrentStep[]): string[] =>
  CAUTIONS.filter((c) => steps.includes(c.step)).map((c) => c.text);
