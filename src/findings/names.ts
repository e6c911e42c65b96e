import type { Cable } from '../trial/trial.ts';

/**
 * The name that each cable goes by: its maker alone where no other cable of the trial has the same maker, maker and model
 * otherwise, so that a row of pictures can be read.
 */
export function shownNames(cables: readonly Cable[]): Map<string, string> {
  const makers = new Map<string, number>();
  for (const { row } of cables) {
    const maker = (row.maker ?? '').trim();
    makers.set(maker, (makers.get(maker) ?? 0) + 1);
  }
  return new Map(
    cables.map((c) => {
      const maker = (c.row.maker ?? '').trim();
      return [c.cable, maker !== '' && makers.get(maker) === 1 ? maker : c.name];
    }),
  );
}
