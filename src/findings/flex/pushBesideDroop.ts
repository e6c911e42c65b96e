import type { FlexCable } from '../shapes/flex.ts';
import { ONE_TEMPERATURE } from './atTemperature.ts';
import { measuredOfLn, weighted } from './lnFigure.ts';
import { compared, type StiffnessAt } from './stiffness.ts';

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

function differenceText(
  { value, interval: [low, high] }: { value: number; interval: [number, number] },
  state: string,
) {
  if (low <= 1 && high >= 1) return '';
  const by = `${Math.round(100 * Math.abs(value - 1))} %`;
  const [more, why] =
    value > 1
      ? [
          'stiffer',
          'a push bends the piece only a little, while friction still holds its strands together; drooping bends it further, and they slide',
        ]
      : ['softer', 'a piece that was bent before has looser strands, and a push feels that more than a droop does'];
  return `By ${stateWords(state)} it is ${by} ${more} than by droop, more than both ± allow: ${why}. The stiffness quoted is that by droop.`;
}
