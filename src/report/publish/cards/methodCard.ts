import type { Canvas } from './canvas.ts';
import { brokenLines, fitName } from './fitName.ts';
import type { MethodExplained } from './methods.ts';
import { type CardFoot, foot, footRoom, nameLines } from './pieces.ts';

/** One method explained: its title, the sentence that is said, and what the tools must do. */
export function methodCard(
  canvas: Canvas,
  { title, sentence, note }: MethodExplained,
  { foot: said }: { foot: CardFoot },
): string {
  const { safe, format } = canvas;
  const width = safe.right - safe.left;
  const head = fitName(title, width, { largest: 84, most: 2 });
  const size = format.shape === 'wide' ? 52 : 46;
  const lines = brokenLines(sentence, format.shape === 'wide' ? width * 0.86 : width, size * 1.08);
  const noteLines = brokenLines(note, width, 32 * 1.08);
  const lineHeight = size * 1.36;
  const bottom = safe.bottom - footRoom(false);
  const block = head.lines.length * head.lineHeight + 40 + lines.length * lineHeight + 50 + noteLines.length * 44;
  const top = Math.max(safe.top, safe.top + (bottom - safe.top - block) / 2);
  const headY = top + head.size * 0.8;
  const ruleY = headY + (head.lines.length - 1) * head.lineHeight + 40;
  const sentenceY = ruleY + 30 + size;
  const noteY = sentenceY + (lines.length - 1) * lineHeight + 76;
  return canvas.card(
    `${title}. ${sentence} ${note}`,
    nameLines(canvas, safe.left, headY, head),
    canvas.line(safe.left, ruleY, safe.right, ruleY, 3),
    ...lines.map((text, i) => canvas.text(safe.left, sentenceY + i * lineHeight, text, { size })),
    ...noteLines.map((text, i) => canvas.text(safe.left, noteY + i * 44, text, { size: 32, fill: canvas.quiet })),
    foot(canvas, said, false),
  );
}
