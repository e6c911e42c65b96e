import { chosenMark, MARK_WORDS, MARKS, type MarkName, marks, moveMark } from '../../../store/bend/photoMarks.ts';
import { Overlay } from './markedPhoto.tsx';

interface MarkListProps {
  url: string;
  size: { width: number; height: number };
}

const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
/** With the shift key held a mark goes so many steps at once. */
const LEAP = 10;
/** One step, as a share of the photo's width: a px where it is shown about a thousand px wide. */
const STEP = 1 / 1000;
/** How much of the photo the glass shows, as a share of its width. */
const GLASS = 0.12;

/** The four marks to choose from; the one that has the focus moves with the arrow keys. A glass shows it large. */
export function MarkList({ url, size }: MarkListProps) {
  return (
    <div class="mark-list">
      <ol>
        {MARKS.map((name) => (
          <li key={name}>
            <button
              type="button"
              class="button"
              aria-pressed={name === chosenMark.value}
              onClick={() => {
                chosenMark.value = name;
              }}
              onKeyDown={(event) => step(event, name, size)}
            >
              {MARK_WORDS[name]}
              <span class="note"> {placeWords(name)}</span>
            </button>
          </li>
        ))}
      </ol>
      <Glass url={url} size={size} />
      <p class="note">
        Tap the photo to set the mark that is chosen, or drag it. With the keyboard: arrow keys move it, ten times as
        far with the shift key.
      </p>
    </div>
  );
}

function placeWords(name: MarkName): string {
  const at = marks.value[name];
  return at === undefined ? 'not set' : `at ${Math.round(at.x)}, ${Math.round(at.y)}`;
}

function step(event: KeyboardEvent, name: MarkName, { width, height }: MarkListProps['size']): void {
  const way = STEPS[event.key];
  if (way === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
  event.preventDefault();
  chosenMark.value = name;
  const by = Math.max(1, width * STEP) * (event.shiftKey ? LEAP : 1);
  const from = marks.peek()[name] ?? { x: width / 2, y: height / 2 };
  const within = (value: number, most: number) => Math.min(most, Math.max(0, value));
  moveMark(name, { x: within(from.x + way[0] * by, width), y: within(from.y + way[1] * by, height) });
}

/** The surroundings of the chosen mark, large: a finger covers what it points at. */
function Glass({ url, size }: MarkListProps) {
  const at = marks.value[chosenMark.value];
  if (at === undefined) return null;
  const span = size.width * GLASS;
  return (
    <svg class="glass" viewBox={`${at.x - span / 2} ${at.y - span / 2} ${span} ${span}`} aria-hidden="true">
      <image href={url} width={size.width} height={size.height} />
      <Overlay unit={span / 180} />
    </svg>
  );
}
