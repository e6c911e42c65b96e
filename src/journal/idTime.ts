/** Milliseconds since 1970 in a UUIDv7: its first 48 bits (RFC 9562 §5.7). */
export function idTime(id: string): number {
  return Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16);
}
