import type { Reading, Trial } from '../../../../trial/trial.ts';

/**
 * Which of the readings of one quantity on one piece it is, and when it was taken: `reading 2 of 3, 25 Nov, 14:32`. Numbered as
 * they stand beside the field, those that no longer count included; without a time where none was kept.
 */
export function whichReading({ readings }: Pick<Trial, 'readings'>, reading: Reading): string {
  const same = readings.filter((r) => r.specimen === reading.specimen && r.quantity === reading.quantity);
  const number = `reading ${same.findIndex((r) => r.reading === reading.reading) + 1} of ${same.length}`;
  const at = new Date(reading.row.at ?? '');
  if (Number.isNaN(at.getTime())) return number;
  return `${number}, ${DAY.format(at)}, ${TIME.format(at)}`;
}

const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });
const TIME = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });
