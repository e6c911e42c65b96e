import { useEffect, useState } from 'preact/hooks';

/** ms without a change after which a march through time is worth its while. */
const REST = 300;

/** What `make` comes to once nothing of `on` has changed for a moment; null before, and what was found before meanwhile. */
export function useAfterRest<T>(make: () => T | null, on: readonly unknown[]): T | null {
  const [found, setFound] = useState<T | null>(null);
  useEffect(() => {
    const wait = setTimeout(() => setFound(make()), REST);
    return () => clearTimeout(wait);
  }, on);
  return found;
}
