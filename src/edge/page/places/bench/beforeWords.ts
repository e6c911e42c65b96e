import type { Step } from '../../../../methods/decide/workMinutes.ts';

/** What is said before a step: how to do it, and what can hurt whoever does it. */
export interface BeforeStep {
  head: string;
  how: string;
  caution: string;
}

/** Every step of the bench. Common practice, no source. */
export const BEFORE: Readonly<Record<Step, BeforeStep>> = {
  ohms: {
    head: 'Before you read ohms',
    how: 'Touch the clips together and zero the meter. Current goes in round all strands at the very ends; the voltage clips sit further in, at least one and a half times round the bundle. Turn the clips about for every second reading.',
    caution:
      'The meter’s own small current only: battery disconnected, no charger, and never the inside of anything that runs on mains.',
  },
  bend: {
    head: 'Before you bend',
    how: 'Clamp the same length each time and give the piece a minute to settle. Read free length and drop, then turn it over.',
    caution:
      'A coiled cable whips back and a cold jacket can throw chips. Eye protection on, one end clamped, face out of its path.',
  },
  cut: {
    head: 'Before you cut',
    how: 'Are the ohms of the whole length on record? They cannot be read afterwards. Cut square, and tag both ends before the piece leaves the clamp.',
    caution:
      'Clamp first, eye protection on, fingers behind the blade. Pick slivers up with tape: copper does not follow a magnet.',
  },
  strip: {
    head: 'Before you strip',
    how: 'Score round and along, then peel. Keep every strand and every crumb of jacket of this piece together.',
    caution: 'Draw the blade away from the hand that holds, and wear a glove that stops it.',
  },
  weigh: {
    head: 'Before you weigh',
    how: 'Let the scale warm up and zero it with its tray empty. Tape, paper and talc come off the piece: they weigh too.',
    caution:
      'Peel the jacket away from the hand that holds, and lift slivers off with tape: they stay in skin and short circuits. Wipe dust up wet and wash your hands; this scale does not go back to the kitchen.',
  },
  strands: {
    head: 'Before you count',
    how: 'Count bundle by bundle and lay each aside. A strand is measured with a micrometer, on a straight stretch, without squeezing.',
    caution: 'Loose strands stab and spring: eye protection on, and gather them with tape.',
  },
  eye: {
    head: 'Before you look',
    how: 'Scrape a strand from the outside, the middle and the centre. White under the copper is another metal.',
    caution: 'Strong magnets pinch, and stay away from pacemakers.',
  },
  wall: {
    head: 'Before you measure the wall',
    how: 'A fresh square cut, jaws closed until they only just touch. Go round the cut in six places, the thinnest among them.',
    caution: 'Blade away from the hand. Old jackets can hold lead: no dry sanding, and wash before you eat.',
  },
  abuse: {
    head: 'Before you wear a jacket out',
    how: 'Set the amount and when to stop before the start. A piece that survives is a reading too.',
    caution:
      'Feet and fingers clear of anything that falls or turns; fumes and fluids outdoors, never both in one session.',
  },
};

/** How to take a quantity where that is not how the rest of its step is taken. */
export const HOW_INSTEAD: Readonly<Record<string, string>> = {
  push_span: 'Lay the piece over two straight supports. A span of twenty diameters and more bends; a short one shears.',
  push_deflection:
    'Press the middle down step by step and read each step before going on. Count from the scale’s platform, which sinks under the push, not from the bench. Four steps and more make a line.',
  push_force:
    'The scale shows grams of force; keep it from turning itself off. The first push of a fresh piece is its own run: afterwards the piece is worked in.',
  coil_diameter: 'Wind the piece by hand as tight as it goes without kinking, and let somebody else measure across.',
  coil_turns: 'Wind the whole piece by hand as tight as it goes without kinking; a turn is told to an eighth.',
  spring_back:
    'Bend it to an angle and hold for a minute, let go, wait a minute, and read what is left. What returned, as a share of the bend: bent 90°, left 30°, is 67 %.',
};

/** What the quantity asks for beyond its step. */
export const OF_QUANTITY: Readonly<Record<string, string>> = {
  specimen_mass: 'This is the piece as cut, jacket and all.',
  conductor_length: 'Bare metal, straight, from end face to end face; the second time on the other side.',
  conductor_mass: 'All strands of the piece and nothing else.',
  jacket_mass: 'All of the jacket, with whatever stuck to it.',
  strand_diameter: 'Another strand each time; a caliper cannot read this.',
  outer_diameter: 'Once, then a quarter turn further.',
  tip_drop: 'From the level of the clamp down to the tip.',
  overhang: 'From the edge of the clamp to the tip, along the cable.',
  chord_angle: 'Of the straight line from the clamp to the tip, below level; not the slope of the tip.',
};
