/** Keeps what a photo says as readings of the piece: what hangs free as typed, the drop as marked. */
import { readTypedQuantity } from '../../../../units/typedQuantity.ts';
import { freshName } from '../bench/freshName.ts';
import { room, roomUnit } from '../bench/room.ts';
import { announce } from '../bench/said.ts';
import { folded, say } from '../journal/journal.ts';
import { faceUp, overhangTyped, type PhotoReading } from './photoMarks.ts';

/** A photo older than this was not taken at the temperature that the room has now, ms. Ours. */
const SAME_SESSION = 6 * 3_600_000;
/** Both ways up of one piece, from photos, belong together. */
const SET = 'droop in photos';

/**
 * Two readings: `overhang` unless the same was kept from a photo before, and `tip_drop` with the way up. The note of each says
 * that it was read from a photo.
 *
 * @throws Error when this device refuses to keep them
 */
export async function keepPhotoReadings(
  piece: string,
  note: string,
  photoAt: string | null,
  read: PhotoReading,
): Promise<void> {
  const hangs = readTypedQuantity(overhangTyped.peek(), 'length', 'mm');
  if (!hangs.ok) throw new Error(`Found ${hangs.found}; expected ${hangs.expected}.`);
  const taken = photoAt === null ? Date.now() : Date.parse(photoAt);
  const warm = Date.now() - taken < SAME_SESSION ? room.peek().trim() : '';
  const common = {
    ...(warm === '' ? {} : { temperature: warm, temperature_unit: roomUnit.peek() }),
    specimen: piece,
    unit: 'mm',
    set: SET,
    at: photoAt ?? new Date().toISOString(),
  };
  const inMm = hangs.value.value * 1000;
  const before = folded.peek()?.readings ?? [];
  const known = before.some(
    (r) =>
      r.standing === 'counted' &&
      r.specimen === piece &&
      r.set === SET &&
      r.quantity === 'overhang' &&
      Math.abs(r.value * 1000 - inMm) < 0.05,
  );
  if (!known)
    await say('reading', {
      ...common,
      reading: freshName('r'),
      quantity: 'overhang',
      value: String(Number(inMm.toFixed(1))),
      note: `typed with the photo of note ${note}`,
    });
  const decimals = read.doubt * 1000 < 0.5 ? 1 : 0;
  await say('reading', {
    ...common,
    reading: freshName('r'),
    quantity: 'tip_drop',
    value: (read.found.drop * 1000).toFixed(decimals),
    position: faceUp.peek(),
    note: `read from the photo of note ${note}, taps within ${(read.doubt * 1000).toFixed(1)} mm`,
  });
  announce('Kept: overhang and tip drop from the photo.', { kept: true });
}
