/** Heavy cable takes about this long to come to the room's temperature, h, by metal area. Common practice, no source. */
const SOAK_HOURS: readonly (readonly [area: number, hours: number])[] = [
  [10e-6, 1],
  [70e-6, 2],
];
/** Thicker than that, or coiled on a spool, it lies overnight. Common practice, no source. */
export const OVERNIGHT_HOURS = 12;

/**
 * How long a cable lies uncoiled in the room before it is read, h: 1 h up to 10 mm², 2 h up to 70 mm², overnight above.
 *
 * @param area claimed metal area, m²
 */
export function soakHours(area: number): number {
  return SOAK_HOURS.find(([most]) => area <= most)?.[1] ?? OVERNIGHT_HOURS;
}
