import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** Rows drawn beyond what is in sight, above and below. */
const BEYOND = 8;
/** The window moves by so many rows at a time, so that not every pixel of scrolling draws anew. */
const STEP = 2;

export interface RowWindow {
  frame: RefObject<HTMLDivElement | null>;
  onScroll: () => void;
  first: number;
  /** One past the last. */
  end: number;
}

/**
 * The rows of a long list that are near what is in sight; all rows are `rowHeight` px high. When the row that has the focus leaves the
 * window, the list itself takes it, so that the keyboard goes on from there.
 *
 * @param asked what the list answers; where that changes it begins at its top again
 */
export function useWindow(count: number, rowHeight: number, asked: string): RowWindow {
  const frame = useRef<HTMLDivElement>(null);
  const [first, setFirst] = useState(0);
  const [height, setHeight] = useState(600);
  const held = useRef(false);

  const place = () => {
    const now = frame.current;
    if (now === null) return;
    held.current = now.contains(document.activeElement) && document.activeElement !== now;
    const top = Math.floor(now.scrollTop / rowHeight) - BEYOND;
    setFirst(Math.max(0, Math.floor(top / STEP) * STEP));
  };

  useLayoutEffect(() => {
    const now = frame.current;
    if (now === null) return;
    const watch = new ResizeObserver(([entry]) => setHeight(entry!.contentRect.height));
    watch.observe(now);
    return () => watch.disconnect();
  }, []);
  const answered = useRef(asked);
  useLayoutEffect(() => {
    if (answered.current !== asked) frame.current?.scrollTo({ top: 0, behavior: 'instant' });
    answered.current = asked;
    place();
  }, [count, rowHeight, asked]);
  useLayoutEffect(() => {
    const now = frame.current;
    if (held.current && now !== null && !now.contains(document.activeElement)) now.focus({ preventScroll: true });
  }, [first]);

  const shown = Math.ceil(height / rowHeight) + 2 * BEYOND + STEP;
  const from = Math.min(first, Math.max(0, count - 1));
  return { frame, onScroll: place, first: count === 0 ? 0 : from, end: Math.min(count, from + shown) };
}
