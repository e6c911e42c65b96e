import { angleOfPosition } from '../../methods/jacket/wall.ts';
import type { Trial } from '../../trial/trial.ts';

const DEGREES_PER_HOUR = 30;
const HOURS_ON_CLOCK = 12;

/** The six places of a cut face at which the wall is read, as they are written down, in the order in which they are taken. */
export const WALL_HOURS = [12, 2, 4, 6, 8, 10].map((hour) => `${hour} o'clock`) as readonly string[];

/** How often the wall of a piece was read at each of the six places. */
export function wallsRead({ readings }: Pick<Trial, 'readings'>, specimen: string): number[] {
  const read = readings
    .filter((r) => r.standing === 'counted' && r.specimen === specimen && r.quantity === 'wall_thickness')
    .map((r) => angleOfPosition(r.position));
  return WALL_HOURS.map((hour) => read.filter((angle) => angle === angleOfPosition(hour)).length);
}

/** The place to read next: the first of those that were read least. */
export function nextWallHour(trial: Pick<Trial, 'readings'>, specimen: string): string {
  const read = wallsRead(trial, specimen);
  return WALL_HOURS[read.indexOf(Math.min(...read))]!;
}

/** `6` of `6 o'clock`: what stands on the clock's face. */
export const hourOf = (position: string): number =>
  ((angleOfPosition(position) ?? 0) / DEGREES_PER_HOUR) % HOURS_ON_CLOCK || HOURS_ON_CLOCK;
