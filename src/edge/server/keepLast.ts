/** Puts something last, as the one used last, and lets go of what was not used for longest where that makes more than `most`. */
export function keepLast<V>(kept: Map<string, V>, key: string, value: V, most: number): void {
  kept.delete(key);
  kept.set(key, value);
  if (kept.size > most) kept.delete(kept.keys().next().value as string);
}
