/** A later invented day: one piece is heated at two steady currents, from rest each time, by an invented logger. */
import { type Draws, drawsFrom } from '../../test/simulate/random.ts';
import { type Row, row, shown } from '../../test/simulate/tables.ts';
import { metalArea } from './benchDay.ts';
import type { Truth } from './truths.ts';

const HEATED = 'brackenfell';
const PIECE = `${HEATED}-heat`;
/** m between the voltage contacts, which stand inside the clamps. */
const BETWEEN_CONTACTS = 0.4;
/** A, the steady rise that is really there, K, and when the current came on, s since the logger was started. */
const RUNS = [
  { current: 110, steady: 16.6, on: 120 },
  { current: 160, steady: 38.4, on: 9120 },
] as const;
const EVERY = 30; // s between rows
const RESTS = 4; // rows before the current comes on
const HEATS = 3000; // s under current
/** Shares of the rise and time constants, s: the wall follows the strands quickly, the whole more slowly. */
const PARTS = [
  { share: 0.82, tau: 560 },
  { share: 0.18, tau: 70 },
] as const;
const ROOM = 20.4; // °C at the start of the day
const LOGGER = { kelvin: 0.1, scatter: 0.12, amps: 0.1, volts: 1e-5, wander: 0.08 };

export const HEATED_PIECE: Row = row({
  specimen: PIECE,
  cable: HEATED,
  code: 'KR',
  cut_length: 600,
  cut_length_unit: 'mm',
  cut_from: `${HEATED}-whole`,
  kind: '',
  taken_from: 'middle',
  note: 'for the heating test: a thermocouple among the strands, voltage contacts 400 mm apart',
});

const riseAt = (t: number): number =>
  t <= 0 ? 0 : PARTS.reduce((sum, { share, tau }) => sum + share * (1 - Math.exp(-t / tau)), 0);

/** Rows of the log: rest, heating, then again on the next current after the piece has cooled. */
export function heatDay(truths: readonly Truth[], seed: number): Row[] {
  const truth = truths.find(({ id }) => id === HEATED)!;
  const draws = drawsFrom(seed);
  const ohms20 = (truth.resistivity * truth.layFactor * BETWEEN_CONTACTS) / metalArea(truth);
  let room = ROOM;
  return RUNS.flatMap(({ current, steady, on }) =>
    Array.from({ length: RESTS + HEATS / EVERY }, (_, i) => {
      const t = (i - RESTS + 1) * EVERY;
      room += draws.scatter(LOGGER.wander) - 0.02 * (room - ROOM);
      const heated = t > 0;
      const conductor = room + steady * riseAt(t);
      const amps = heated ? current * (1 + draws.scatter(0.002)) : 0;
      const ohms = ohms20 * (1 + truth.temperatureCoefficient * (conductor - 20));
      return logRow(draws, { time: on + t, amps, conductor, room, volts: amps * ohms });
    }),
  );
}

function logRow(
  draws: Draws,
  { time, amps, conductor, room, volts }: Record<'time' | 'amps' | 'conductor' | 'room' | 'volts', number>,
): Row {
  const read = (kelvin: number) => shown(kelvin + draws.scatter(LOGGER.scatter), LOGGER.kelvin);
  return row({
    specimen: PIECE,
    time_s: String(time),
    current_A: shown(amps, LOGGER.amps),
    conductor_C: read(conductor),
    ambient_C: read(room),
    drop_V: amps === 0 ? null : shown(volts + draws.scatter(LOGGER.volts / 2), LOGGER.volts),
  });
}
