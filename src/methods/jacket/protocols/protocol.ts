/** One thing to do, with the cautions that concern it. */
export interface Step {
  text: string;
  cautions: readonly string[];
}

export const step = (text: string, ...cautions: string[]): Step => ({ text, cautions });

/** One endurance test as a bench can run it: what to build, what to do, when to stop, what to beware of, what to write down. */
export interface Protocol {
  /** Short name, as written in the column `test`. */
  name: string;
  /** Other beginnings by which the same test is known, lower case. */
  alsoCalled: readonly string[];
  /** `amount`: how much until the conductor shows; `passed`: came through or not after one fixed exposure. */
  kind: 'amount' | 'passed';
  /** Unit of the amount. */
  unit: string;
  /** What `stress` holds, and its unit; null for none. */
  stress: { what: string; unit: string } | null;
  /** A thicker wall lasts longer of itself, so the amount is also given per millimetre of it. */
  perWall: boolean;
  /** What the piece is for: one question in plain words. */
  asks: string;
  apparatus: readonly string[];
  steps: readonly Step[];
  stop: string;
  /** What is written down. */
  record: string;
  /** Counted by hand or run by the clock. */
  counter: 'strokes' | 'timer' | null;
}

/** How showing copper is noticed, in every test that wears through. */
export const SHOW_THROUGH =
  'Notice the copper by eye, or by a buzzer between the tool and the conductor that runs from a coin cell or from a meter, never from a vehicle battery: when the tool reaches copper, that is a short circuit.';
export const DUST = 'Old or cheap jackets can hold lead: wear a mask or rub wet, wash hands, keep the dust off food.';
export const EYES =
  'Eye protection. Clamp one end, keep the face out of the plane of the bend: a cold coil whips back and brittle jackets throw chips.';
export const HEAT =
  'Outdoors or with an extractor: fumes of PVC are acid, those of fluoropolymers are toxic. No kitchen oven, no flame, and no burning, which tells nothing that the density does not.';
export const APART =
  'Fluids and heat never on one day or in one room: vapour meets the hot iron, the heater or the spark of a buzzer.';
