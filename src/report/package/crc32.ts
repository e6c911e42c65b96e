/** Remainders of one byte for the reversed polynomial 0xEDB88320 (ITU-T V.42 §8.1.1.6.2; the checksum of .zip and PNG). */
const REMAINDERS = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit++) remainder = remainder & 1 ? (remainder >>> 1) ^ 0xedb88320 : remainder >>> 1;
  return remainder;
});

/** Continues a CRC-32 over more bytes; start with 0. The check value of the nine bytes `123456789` is 0xCBF43926. */
export function crc32(bytes: Uint8Array, before = 0): number {
  let sum = ~before;
  for (const byte of bytes) sum = REMAINDERS[(sum ^ byte) & 0xff]! ^ (sum >>> 8);
  return ~sum >>> 0;
}
