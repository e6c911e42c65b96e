/** The steps of a heating test, each with the cautions that concern it. */
import { CAUTIONS } from '../../../../../methods/current/cautions.ts';

export interface HeatStep {
  text: string;
  cautions: string[];
}

const heatCautions = CAUTIONS.filter((c) => c.step === 'heating test').map((c) => c.text);
const saying = (...words: string[]): string[] =>
  heatCautions.filter((text) => words.some((word) => text.toLowerCase().includes(word)));

export const HEAT_STEPS: readonly HeatStep[] = [
  {
    text: 'Build the circuit: source, fuse, switch, the cable, a load that takes a steady current, and a shunt or clamp that reads it.',
    cautions: saying('fuse of its own', 'opened mains', 'lead batteries'),
  },
  {
    text: 'Lay the cable level on two narrow supports, a metre or more of it clear of everything. Push a thin thermometer under the jacket to the strands in the middle, and hang a second one in the air an arm’s length away.',
    cautions: saying('lay the cable straight'),
  },
  {
    text: 'Choose the piece, the current and the temperature at which you stop. Start well below what the jacket bears.',
    cautions: saying('choose the temperature'),
  },
  {
    text: 'Let the logger run for five minutes without current, so that it shows both thermometers at rest.',
    cautions: [],
  },
  {
    text: 'Switch on and hold the current within a few per cent. Two readings a minute are enough; go on until it rises no more, most often 30 to 60 minutes.',
    cautions: saying('rings and watch'),
  },
  {
    text: 'Switch off at the stop temperature or when it rises no more. Then bring the logger’s file.',
    cautions: [],
  },
];

/** Cautions of the test that no step has: none may be lost. */
export const FURTHER_CAUTIONS: readonly string[] = heatCautions.filter(
  (text) => !HEAT_STEPS.some((step) => step.cautions.includes(text)),
);
