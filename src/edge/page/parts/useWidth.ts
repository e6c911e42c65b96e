import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** The width of an element in CSS pixels, kept up to date; `first` until it has been measured. */
export function useWidth<E extends Element>(first: number): [RefObject<E | null>, number] {
  const element = useRef<E>(null);
  const [width, setWidth] = useState(first);
  useLayoutEffect(() => {
    const now = element.current;
    if (now === null) return;
    setWidth(now.getBoundingClientRect().width || first);
    const watch = new ResizeObserver(([entry]) => setWidth(entry!.contentRect.width || first));
    watch.observe(now);
    return () => watch.disconnect();
  }, [first]);
  return [element, width];
}
