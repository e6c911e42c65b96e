import { useRef } from 'preact/hooks';
import { droopCurve } from '../../../../../methods/flex/droopCurve.ts';
import { type Spot, spotInPhoto } from '../../../../../methods/flex/droopInPhoto.ts';
import {
  chosenMark,
  MARKS,
  type MarkName,
  marks,
  moveMark,
  overhang,
  photoReading,
  placeMark,
} from '../../../store/bend/photoMarks.ts';

interface MarkedPhotoProps {
  url: string;
  size: { width: number; height: number };
}

/** A finger takes hold of a mark within this distance, px of the screen. */
const REACH = 26;

/** The photo with its marks and, once it follows, the computed curve over it. Taps set marks, and marks can be dragged. */
export function MarkedPhoto({ url, size }: MarkedPhotoProps) {
  const picture = useRef<SVGSVGElement>(null);
  const dragged = useRef<MarkName | null>(null);
  /** px of the photo in a px of the screen. */
  const shrunk = () => size.width / (picture.current?.getBoundingClientRect().width || size.width);
  const spotOf = (event: PointerEvent): Spot => {
    const box = picture.current!.getBoundingClientRect();
    const clipped = (share: number) => Math.min(1, Math.max(0, share));
    return {
      x: clipped((event.clientX - box.left) / box.width) * size.width,
      y: clipped((event.clientY - box.top) / box.height) * size.height,
    };
  };
  const down = (event: PointerEvent) => {
    if (event.button !== 0) return;
    const at = spotOf(event);
    const near = MARKS.filter((name) => {
      const mark = marks.peek()[name];
      return mark !== undefined && Math.hypot(mark.x - at.x, mark.y - at.y) < REACH * shrunk();
    });
    const held = near.find((name) => name === chosenMark.peek()) ?? near[0] ?? null;
    if (held === null) placeMark(at);
    else {
      chosenMark.value = held;
      dragged.current = held;
      picture.current!.setPointerCapture(event.pointerId);
    }
    event.preventDefault();
  };
  const move = (event: PointerEvent) => {
    if (dragged.current !== null) moveMark(dragged.current, spotOf(event));
  };
  const up = () => {
    dragged.current = null;
  };
  const unit = size.width / 700;
  return (
    <svg
      ref={picture}
      class="marked-photo"
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label="The photo. Tap to set the mark that is chosen beside it."
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={up}
    >
      <image href={url} width={size.width} height={size.height} />
      <Overlay unit={unit} />
    </svg>
  );
}

/** The curve, the level line and the marks; `unit` is about one px of the screen in px of the photo. */
export function Overlay({ unit }: { unit: number }) {
  const { clamp, tip, ruleFrom, ruleTo } = marks.value;
  return (
    <g fill="none">
      {ruleFrom && ruleTo && (
        <Cased d={`M${ruleFrom.x} ${ruleFrom.y}L${ruleTo.x} ${ruleTo.y}`} unit={unit} dash="6 4" />
      )}
      {clamp && tip && <Level clamp={clamp} unit={unit} />}
      <Curve unit={unit} />
      {MARKS.map((name, place) => {
        const at = marks.value[name];
        return at && <Mark key={name} at={at} number={place + 1} chosen={name === chosenMark.value} unit={unit} />;
      })}
    </g>
  );
}

function Cased({ d, unit, dash = '' }: { d: string; unit: number; dash?: string }) {
  const dashes =
    dash === ''
      ? undefined
      : dash
          .split(' ')
          .map((each) => Number(each) * unit)
          .join(' ');
  return (
    <>
      <path d={d} class="casing" stroke-width={5 * unit} />
      <path d={d} class="stroke" stroke-width={2 * unit} stroke-dasharray={dashes} />
    </>
  );
}

function Level({ clamp, unit }: { clamp: Spot; unit: number }) {
  const found = photoReading.value?.found;
  if (!found) return null;
  const end = spotInPhoto(found, clamp, (overhang.value ?? found.reach) * 1.05, 0);
  return <Cased d={`M${clamp.x} ${clamp.y}L${end.x} ${end.y}`} unit={unit} dash="14 4" />;
}

function Curve({ unit }: { unit: number }) {
  const reading = photoReading.value;
  const { clamp } = marks.value;
  if (!reading || reading.lambda === null || !clamp || overhang.value === null) return null;
  const free = overhang.value;
  const spots = droopCurve(reading.lambda).map(({ reach, drop }) =>
    spotInPhoto(reading.found, clamp, reach * free, drop * free),
  );
  return <Cased d={spots.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('')} unit={unit} />;
}

/** A ring that leaves its middle open, with its number beside it. */
function Mark({ at, number, chosen, unit }: { at: Spot; number: number; chosen: boolean; unit: number }) {
  const r = (chosen ? 13 : 10) * unit;
  const cross = `M${at.x - r} ${at.y}h${r * 0.6}M${at.x + r} ${at.y}h${-r * 0.6}M${at.x} ${at.y - r}v${r * 0.6}M${at.x} ${at.y + r}v${-r * 0.6}`;
  return (
    <g data-mark={number}>
      <circle cx={at.x} cy={at.y} r={r} class="casing" stroke-width={5 * unit} />
      <circle cx={at.x} cy={at.y} r={r} class="stroke" stroke-width={(chosen ? 3 : 2) * unit} />
      <path d={cross} class="stroke" stroke-width={1.5 * unit} />
      <text
        x={at.x + r + 4 * unit}
        y={at.y - r * 0.5}
        font-size={18 * unit}
        stroke-width={4 * unit}
        class="mark-number"
      >
        {number}
      </text>
    </g>
  );
}
