import { useRef, useState } from 'preact/hooks';
import type { CriterionFound } from '../../../../findings/shapes/decide.ts';
import { endText, scaleSentence, unitOf } from '../../../../report/standing/criterionWords.ts';
import {
  type CurveWindow,
  keptWindow,
  roundedTo,
  stepWithin,
  windowOf,
} from '../../../../report/standing/curveWindow.ts';
import { endRange } from '../../../../report/standing/endRange.ts';
import { curvePlaces, type Scale, valueCurve } from '../../../../report/standing/valueCurve.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';

const USUAL_WIDTH = 168;
const WIDEST = 360;
const HEIGHT = 120;
/** Steps that Page Up and Page Down go. */
const PAGE = 10;

interface ValueCurveFieldProps {
  criterion: CriterionFound;
  onSet: (scale: Scale) => void;
}

/**
 * A value curve whose ends are taken hold of: dragged, or moved by the arrow keys. They stand at fixed figures; the axis stays as it
 * is while one moves, so that the same way of the finger is the same figure.
 */
export function ValueCurveField({ criterion, onSet }: ValueCurveFieldProps) {
  const { shape, worst, best } = criterion;
  const [frame, width] = useWidth<HTMLDivElement>(USUAL_WIDTH);
  const axis = useRef<CurveWindow>(windowOf(criterion));
  const [held, setHeld] = useState<'worst' | 'best' | null>(null);
  if (held === null) axis.current = keptWindow(axis.current, criterion);
  const window = axis.current;
  const [low, high] = best > worst ? [worst, best] : [best, worst];
  const size = { width: Math.min(WIDEST, Math.round(width)), height: HEIGHT, roomy: true };
  const ends = { low: endText(criterion, low), high: endText(criterion, high) };
  const places = curvePlaces(window, { ...size, ends });
  const step = stepWithin(window);
  const rangeOf = (end: 'worst' | 'best') => reachOf(end, criterion, window, step);
  const move = (end: 'worst' | 'best', to: number) => {
    const [least, most] = rangeOf(end);
    const [from, upTo] = endRange(criterion);
    const figure = Math.min(most, upTo, Math.max(least, from, roundedTo(to, step)));
    if (figure === criterion[end]) return;
    if (end === 'worst') onSet({ shape, worst: figure, best });
    else onSet({ shape, best: figure, worst: shape === 'threshold' ? figure - (best - worst) : worst });
  };
  return (
    <div class="curve-field" ref={frame}>
      <div style={{ inlineSize: `${size.width}px` }}>
        <Picture
          svg={valueCurve(criterion, {
            ...size,
            theme: variablesTheme,
            ends,
            description: scaleSentence(criterion),
            window,
          })}
        />
        {(shape === 'threshold' ? (['best'] as const) : (['worst', 'best'] as const)).map((end) => (
          <Knob
            key={end}
            name={nameOf(end, criterion)}
            value={criterion[end]}
            range={rangeOf(end)}
            step={step}
            shown={(figure) => `${endText(criterion, figure)} ${unitOf(criterion)}`.trim()}
            place={{ left: places.x(criterion[end]), top: places.y(end === 'best' ? 1 : 0) }}
            figureAt={places.figureAt}
            onHold={(on) => setHeld(on ? end : null)}
            onMove={(to) => move(end, to)}
          />
        ))}
      </div>
    </div>
  );
}

function nameOf(end: 'worst' | 'best', { name, shape, better }: CriterionFound): string {
  if (shape === 'threshold') return `${name}: ${better === 'more' ? 'at least' : 'at most'}`;
  return `${name}: worth ${end === 'best' ? 'everything' : 'nothing'} at`;
}

/** How far an end may go: within what is shown, and not past the other one, which would turn the criterion round. */
function reachOf(
  end: 'worst' | 'best',
  { shape, worst, best }: Scale,
  [low, high]: CurveWindow,
  step: number,
): [number, number] {
  if (shape === 'threshold') return [low, high];
  const [own, other] = end === 'best' ? [best, worst] : [worst, best];
  return own > other
    ? [Math.min(own, other + step), Math.max(own, high)]
    : [Math.min(own, low), Math.max(own, other - step)];
}

interface KnobProps {
  name: string;
  value: number;
  range: readonly [number, number];
  step: number;
  shown: (figure: number) => string;
  /** Centre in the picture, px. */
  place: { left: number; top: number };
  figureAt: (x: number) => number;
  onHold: (on: boolean) => void;
  onMove: (to: number) => void;
}

/** One end of the curve: a slider for keys and readers aloud, a disc for fingers. */
function Knob({ name, value, range, step, shown, place, figureAt, onHold, onMove }: KnobProps) {
  const [least, most] = range;
  /** How far from the disc's centre it was taken hold of, px. */
  const grip = useRef<number | null>(null);
  const xOf = (event: PointerEvent) => {
    const picture = (event.currentTarget as HTMLElement).parentElement!;
    return event.clientX - picture.getBoundingClientRect().left;
  };
  const letGo = () => {
    if (grip.current === null) return;
    grip.current = null;
    onHold(false);
  };
  const byKey: Record<string, number> = {
    ArrowRight: value + step,
    ArrowUp: value + step,
    ArrowLeft: value - step,
    ArrowDown: value - step,
    PageUp: value + PAGE * step,
    PageDown: value - PAGE * step,
    Home: least,
    End: most,
  };
  return (
    <span
      class="curve-knob"
      role="slider"
      tabIndex={0}
      aria-label={name}
      aria-valuemin={least}
      aria-valuemax={most}
      aria-valuenow={value}
      aria-valuetext={shown(value)}
      style={{ left: `${place.left}px`, top: `${place.top}px` }}
      onKeyDown={(event) => {
        const to = byKey[event.key];
        if (to === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
        event.preventDefault();
        onMove(to);
      }}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.preventDefault();
        event.currentTarget.focus({ preventScroll: true });
        event.currentTarget.setPointerCapture(event.pointerId);
        grip.current = xOf(event) - place.left;
        onHold(true);
      }}
      onPointerMove={(event) => {
        if (grip.current !== null) onMove(figureAt(xOf(event) - grip.current));
      }}
      onPointerUp={letGo}
      onPointerCancel={letGo}
      onLostPointerCapture={letGo}
    />
  );
}
