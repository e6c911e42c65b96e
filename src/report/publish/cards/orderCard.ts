import { failsOnMetal, outcomeWords, saidClaim, withoutClaim } from '../../../findings/cableOutcome.ts';
import type { CableFindings, Findings } from '../../../findings/schema.ts';
import type { Decide } from '../../../findings/shapes/decide.ts';
import { group, rectangle } from '../../svg.ts';
import { chanceText } from '../../words/chanceWords.ts';
import { bandPlaces } from '../pictures/placeChart.ts';
import type { Canvas } from './canvas.ts';
import { fitName, heightBelow } from './fitName.ts';
import { type CardFoot, foot, footRoom, nameLines } from './pieces.ts';

/** What stands where a part is still to come. */
const TO_COME = 'to come';
/** px; a card that stands upright has the height for more. */
const LARGEST_ROW = { wide: 132, square: 132, tall: 210 } as const;

/** The order so far: bands with their places and the chance of the first; before there is one, a table of what is known so far. */
export function orderCard(
  canvas: Canvas,
  findings: Findings,
  cables: readonly CableFindings[],
  { foot: said }: { foot: CardFoot },
): string {
  const { safe } = canvas;
  const { decide } = findings;
  const title = decide === null ? 'The table so far' : 'The order so far';
  const sub = decide === null ? 'What is not measured yet is left open.' : subOf(decide);
  const width = safe.right - safe.left;
  const head = fitName(title, width, { largest: 64, most: 1 });
  const headTop = safe.top + head.size * 0.8;
  const note = fitName(sub, width, { largest: 28, most: 2, display: false });
  const top = headTop + 24 + note.lines.length * 36 + 24;
  const bottom = safe.bottom - footRoom(false);
  const rows = decide === null ? cables.length : decide.cables.length;
  const row = Math.min(LARGEST_ROW[canvas.format.shape], (bottom - top) / Math.max(1, rows));
  const body = decide === null ? tableSoFar(canvas, findings, cables, top, bottom) : order(canvas, decide, top, row);
  return canvas.card(
    decide?.sentence || `${title}: ${cables.map(({ name }) => name).join(', ')}.`,
    nameLines(canvas, safe.left, headTop, head),
    ...note.lines.map((text, i) =>
      canvas.text(safe.left, headTop + 48 + i * 36, text, { size: Math.min(28, note.size), fill: canvas.quiet }),
    ),
    body,
    foot(canvas, said, false),
  );
}

function subOf({ criteria, job }: Decide): string {
  if (job !== null) return `For the job: ${job}.`;
  const counted = criteria.filter(({ weight }) => weight > 0).sort((a, b) => b.weight - a.weight);
  return `By ${counted.map(({ name, weight }) => `${name.toLowerCase().split(',')[0]} ${Math.round(100 * weight)}`).join(', ')}.`;
}

/** Bands in their brackets; the bar is the chance of the first place. */
function order(canvas: Canvas, { cables }: Decide, top: number, row: number): string {
  const { safe, theme, format } = canvas;
  const places = format.shape === 'wide' ? 250 : 190;
  const chance = format.shape === 'wide' ? 520 : 220;
  const nameWidth = safe.right - safe.left - places - chance - 40;
  const parts: string[] = [];
  cables.forEach((c, i) => {
    const y = top + i * row;
    const name = fitName(c.name, nameWidth, { largest: Math.min(48, row * 0.5), most: row > 84 ? 2 : 1 });
    const middle = y + row / 2 + name.size * 0.34 - heightBelow(name) / 2;
    const bar = Math.max(0, c.probability_first) * (chance - 120);
    const left = safe.right - chance;
    parts.push(
      nameLines(canvas, safe.left + places, middle, name),
      c.probability_first >= 0.005
        ? rectangle(left, y + row / 2 - 14, Math.max(3, bar), 28, { fill: theme.copper })
        : '',
      canvas.text(left + Math.max(3, bar) + 14, y + row / 2 + 10, chanceText(Math.min(1, c.probability_first)), {
        size: 28,
        weight: c.probability_first >= 0.3 ? '600' : '400',
      }),
      canvas.line(safe.left + places, y + row, safe.right, y + row, 1, theme.rule),
    );
  });
  for (const band of new Set(cables.map((c) => c.band))) {
    const first = cables.findIndex((c) => c.band === band);
    const count = cables.filter((c) => c.band === band).length;
    const [from, to] = [top + first * row + 8, top + (first + count) * row - 8];
    parts.push(
      canvas.line(safe.left + 2, from, safe.left + 2, to, 4),
      canvas.line(safe.left, from, safe.left + 18, from, 4),
      canvas.line(safe.left, to, safe.left + 18, to, 4),
      canvas.text(
        safe.left + 28,
        (from + to) / 2 + (count > 1 && row * count > 100 ? -4 : 10),
        bandPlaces(first + 1, count),
        {
          size: 28,
          weight: '600',
        },
      ),
      count > 1 && row * count > 100
        ? canvas.text(safe.left + 28, (from + to) / 2 + 28, 'no clean cut', { size: 24, fill: canvas.quiet })
        : '',
    );
  }
  parts.push(
    canvas.text(safe.right, top - 8, 'chance of the first place', { size: 24, fill: canvas.quiet, anchor: 'end' }),
  );
  return group({}, ...parts);
}

type Column = [head: string, of: (cable: CableFindings) => string];

function columnsSoFar({ flex, jacket, current }: Findings): Column[] {
  const band = (n: number | null | undefined) => (n ? `band ${n}` : TO_COME);
  return [
    [
      'inside',
      (c) => {
        const claim = saidClaim(c);
        if (claim === null) return c.conductor_area === null ? TO_COME : withoutClaim(c);
        return claim.outcome === null && c.conductor_area === null
          ? TO_COME
          : `${outcomeWords(claim)}${failsOnMetal(c) ? ', metal' : ''}`;
      },
    ],
    [
      'bends',
      (c) =>
        band(
          flex?.judged?.cables.find(({ cable }) => cable === c.cable)?.band ??
            flex?.cables.find(({ cable }) => cable === c.cable)?.band,
        ),
    ],
    [
      'wall',
      (c) => wallOf(jacket?.cables.find(({ cable }) => cable === c.cable)?.wall?.mean.value ?? c.wall?.mean.value),
    ],
    [
      'carries',
      (c) => {
        const amps = current?.cables.find(({ cable }) => cable === c.cable)?.carrying;
        return amps ? `about ${Math.round(amps.current_A.value)} A` : TO_COME;
      },
    ],
  ];
}

const wallOf = (mm: number | undefined): string => (mm === undefined ? TO_COME : `${mm.toFixed(1)} mm`);

/** What is known of each cable so far, with honest blanks. */
function tableSoFar(
  canvas: Canvas,
  findings: Findings,
  cables: readonly CableFindings[],
  top: number,
  bottom: number,
): string {
  const { safe, theme, format } = canvas;
  const columns = columnsSoFar(findings);
  const width = safe.right - safe.left;
  const names = width * (format.shape === 'wide' ? 0.34 : 0.36);
  const each = (width - names) / columns.length;
  const row = Math.min(LARGEST_ROW[format.shape], (bottom - top - 44) / Math.max(1, cables.length));
  const heads = columns.map(([head], k) =>
    canvas.text(safe.left + names + k * each, top + 26, head, { size: 24, fill: canvas.quiet }),
  );
  const rows = cables.map((c, i) => {
    const y = top + 44 + i * row;
    const name = fitName(c.name, names - 24, { largest: Math.min(40, row * 0.45), most: row > 84 ? 2 : 1 });
    const cells = columns.map(([, of], k) => {
      const text = of(c);
      const open = text === TO_COME;
      const { lines, size, lineHeight } = fitName(text, each - 14, { largest: 28, most: 2, display: false });
      return group(
        {},
        ...lines.map((l, j) =>
          canvas.text(safe.left + names + k * each, y + row / 2 + 9 + (j - (lines.length - 1) / 2) * lineHeight, l, {
            size: Math.min(28, size),
            fill: open ? theme.edge : theme.ink,
          }),
        ),
      );
    });
    return group(
      {},
      nameLines(canvas, safe.left, y + row / 2 + name.size * 0.34 - heightBelow(name) / 2, name),
      ...cells,
      canvas.line(safe.left, y + row, safe.right, y + row, 1, theme.rule),
    );
  });
  return group({}, ...heads, canvas.line(safe.left, top + 40, safe.right, top + 40, 2), ...rows);
}
