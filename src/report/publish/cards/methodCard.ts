import { group, rectangle } from '../../svg.ts';
import { type Canvas, LEAST_TEXT } from './canvas.ts';
import { methodDiagram } from './diagrams/methodDiagram.ts';
import { BOX, WORD } from './diagrams/pen.ts';
import { brokenLines, fitName, heightBelow } from './fitName.ts';
import type { MethodExplained } from './methods.ts';
import { type CardFoot, foot, footRoom, nameLines } from './pieces.ts';

/** Below this its words would be smaller than the least text of a card. */
const LEAST_SCALE = LEAST_TEXT / WORD;
const NOTE = { size: 32, line: 42 };
const GAP = 40;

interface Area {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** The largest sentence, in the width given, that leaves its height; steps of two. */
function fittedSentence(
  sentence: string,
  note: string,
  { width, height }: Pick<Area, 'width' | 'height'>,
  largest: number,
) {
  const noteLines = brokenLines(note, width, NOTE.size * 1.08);
  for (let size = largest; ; size -= 2) {
    const lines = brokenLines(sentence, width, size * 1.08);
    const tall = lines.length * size * 1.34 + 24 + noteLines.length * NOTE.line;
    if (tall <= height || size <= NOTE.size) return { lines, size, noteLines, tall };
  }
}

function texts(canvas: Canvas, area: Area, fitted: ReturnType<typeof fittedSentence>): string {
  const { lines, size, noteLines } = fitted;
  const first = area.y + size * 0.86;
  const noteY = first + (lines.length - 1) * size * 1.34 + 24 + NOTE.line;
  return group(
    {},
    ...lines.map((text, i) => canvas.text(area.x, first + i * size * 1.34, text, { size })),
    ...noteLines.map((text, i) =>
      canvas.text(area.x, noteY + i * NOTE.line, text, { size: NOTE.size, fill: canvas.quiet }),
    ),
  );
}

/** The diagram as large as the area takes it, in its middle; where the ground is left out it keeps one of its own. */
function drawn(canvas: Canvas, method: string, area: Area): string {
  const scale = Math.max(LEAST_SCALE, Math.min(area.width / BOX.width, area.height / BOX.height));
  const [x, y] = [area.x + (area.width - BOX.width * scale) / 2, area.y + (area.height - BOX.height * scale) / 2];
  const ground = canvas.transparent
    ? rectangle(-12, -12, BOX.width + 24, BOX.height + 24, { fill: canvas.theme.ground })
    : '';
  return group({ transform: `translate(${x} ${y}) scale(${scale})` }, ground, methodDiagram(method, canvas.theme));
}

/** One method explained: its title, how the tools stand, the sentence that is said, and what the tools must do. */
export function methodCard(
  canvas: Canvas,
  { method, title, sentence, note }: MethodExplained,
  { foot: said }: { foot: CardFoot },
): string {
  const { safe, format } = canvas;
  const width = safe.right - safe.left;
  const head = fitName(title, width, { largest: format.shape === 'wide' ? 84 : 64, most: 2 });
  const headY = safe.top + head.size * 0.8;
  const ruleY = headY + heightBelow(head) + 36;
  const below = { x: safe.left, y: ruleY + GAP, width, height: safe.bottom - footRoom(false) - ruleY - GAP };
  const parts = format.shape === 'wide' ? beside(below) : stacked(canvas, below);
  const fitted = fittedSentence(sentence, note, parts.words, parts.largest);
  const words = { ...parts.words, y: parts.words.y + Math.max(0, (parts.words.height - fitted.tall) / 2) };
  return canvas.card(
    `${title}. ${sentence} ${note}`,
    nameLines(canvas, safe.left, headY, head),
    canvas.line(safe.left, ruleY, safe.right, ruleY, 3),
    drawn(canvas, method, parts.picture),
    texts(canvas, format.shape === 'wide' ? words : parts.words, fitted),
    foot(canvas, said, false),
  );
}

/** On a wide card the words stand left, the diagram right. */
function beside({ x, y, width, height }: Area) {
  const words = width * 0.44;
  return {
    largest: 50,
    words: { x, y, width: words, height },
    picture: { x: x + words + 56, y, width: width - words - 56, height },
  };
}

/** On the others the diagram stands over the words. */
function stacked({ format }: Canvas, { x, y, width, height }: Area) {
  const tall = format.shape === 'tall';
  const share = tall ? 0.46 : 0.5;
  const picture = Math.min(height * share, (width * BOX.height) / BOX.width);
  const top = y + picture + (tall ? 56 : 24);
  return {
    largest: tall ? 58 : 40,
    words: { x, y: top, width, height: y + height - top },
    picture: { x, y, width, height: picture },
  };
}
