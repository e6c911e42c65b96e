import type { FlexCable } from '../shapes/flex.ts';
import type { Measured } from '../shapes/measured.ts';
import { ONE_TEMPERATURE } from './atTemperature.ts';
import { measuredOfLn, weighted } from './lnFigure.ts';
import { compared, type StiffnessAt } from './stiffness.ts';
import { listed } from './words.ts';

const stateWords = (state: string) => (state === '' ? 'push' : state === 'worked in' ? 'worked-in push' : state);

/**
 * Stiffness by push over that by droop, at one temperature, with why the two may differ where they do; null without both.
 *
 * Both are right of what they bend. A push presses a short span by a little, so that friction still holds the strands together;
 * a droop bends the piece further, and strands slide. How the piece was bent before changes the one more than the other.
 */
export function pushBesideDroop(all: readonly StiffnessAt[], level: number): FlexCable['push_over_droop'] {
  const pairs = all
    .filter((s) => s.method === 'droop')
    .flatMap((droop) =>
      all.filter((s) => s.method === 'push' && atOneTemperature(s, droop)).map((push) => ({ droop, push })),
    );
  const [pair] = pairs;
  if (!pair) return null;
  const { droop, push } = pair;
  const ratio = measuredOfLn(
    weighted([
      { figure: push.figure, share: 1 },
      { figure: compared(droop), share: -1 },
    ]),
    '1',
    level,
  );
  const state = push.state ?? '';
  return { ratio, state, text: differenceText(ratio, state) };
}

const atOneTemperature = (a: StiffnessAt, b: StiffnessAt) =>
  a.temperature === b.temperature ||
  (a.temperature !== null && b.temperature !== null && Math.abs(a.temperature - b.temperature) <= ONE_TEMPERATURE);

const WHY = {
  stiffer:
    'a push bends a piece only a little, while friction still holds its strands together; drooping bends it further, and they slide',
  softer: 'a piece that was bent before has looser strands, and a push feels that more than a droop does',
};

type Ratio = Pick<Measured, 'value' | 'interval'>;
const isApart = ({ interval: [low, high] }: Ratio) => low > 1 || high < 1;
const wayOf = ({ value }: Ratio) => (value > 1 ? 'stiffer' : 'softer');
const shareText = ({ value }: Ratio) => `${Math.round(100 * Math.abs(value - 1))} %`;

function differenceText(ratio: Ratio, state: string): string {
  if (!isApart(ratio)) return '';
  const way = wayOf(ratio);
  return `By ${stateWords(state)} it is ${shareText(ratio)} ${way} than by droop, more than both ± allow: ${WHY[way]}. The stiffness quoted is that by droop.`;
}

/** The same of all cables at once, one sentence for each way that they differ. */
export function differencesText(cables: readonly Pick<FlexCable, 'name' | 'push_over_droop'>[]): string[] {
  const apart = cables.flatMap(({ name, push_over_droop: of }) =>
    of && isApart(of.ratio) ? [{ name, ratio: of.ratio }] : [],
  );
  return (['stiffer', 'softer'] as const).flatMap((way) => {
    const names = apart
      .filter(({ ratio }) => wayOf(ratio) === way)
      .map(({ name, ratio }) => `${name} (${shareText(ratio)})`);
    if (names.length === 0) return [];
    return `By push, ${listed(names)} ${names.length === 1 ? 'is' : 'are'} ${way} than by droop, more than both ± allow: ${WHY[way]}. The stiffness quoted is that by droop.`;
  });
}
