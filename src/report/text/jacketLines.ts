import type { EnduranceCable, EnduranceTest, JacketCable } from '../../findings/shapes/jacket.ts';
import { capital } from '../../units/capital.ts';
import { rangeText } from '../../units/rangeText.ts';
import { measuredText, percentText, plainText, UNKNOWN } from '../figures.ts';
import { testConditions } from '../jacket/testConditions.ts';
import { type AssayPage, extraSign, paragraph, shown } from './assayPage.ts';
import { cableTable, figures, type Planned } from './cableTable.ts';

const WALL = 13;
const LEAST = 7;
const SHARE = 13;
const DENSITY = 13;
const PIECES = 8;
const HALF = 8;
const RANGE = 14;
const BAND = 5;

/**
 * The block on jackets: walls and shares, then a table for each endurance test with its order in words. No lines for a trial without a
 * word on jackets.
 */
export function jacketLines(page: AssayPage): string[][] {
  const { jacket } = page.findings;
  if (jacket === null) return [];
  const walls = jacket.cables.filter((c) => c.role !== 'control');
  const blocks = walls.length > 0 ? [[shown('Jacket', page), ...cableTable(page, walls, wallColumns(page))]] : [];
  return [
    ...blocks,
    ...doubtLines(walls, page),
    ...jacket.endurance.map((test) => testLines(test, page)),
    exposureLines(page),
  ];
}

/** Why a wall or its shares are held back. */
function doubtLines(cables: readonly JacketCable[], page: AssayPage): string[][] {
  return cables.flatMap(({ name, cable, wall_doubt, shares_doubt }) =>
    [wall_doubt, shares_doubt]
      .filter((text) => text !== '')
      .map((text) => paragraph(`${name === '' ? cable : name}: ${text}`, page)),
  );
}

function wallColumns(page: AssayPage): Planned<JacketCable>[] {
  const extra = extraSign(page);
  const bare = (text: string) => text.replace(/ (mm|g\/cm³)$/, '');
  return [
    figures(page, ['Wall', 'mm'], WALL + extra, ({ wall }) => bare(measuredText(wall?.mean ?? null))),
    figures(page, ['Least', 'mm'], LEAST, ({ stated }) => stated?.least_mm.toFixed(2) ?? UNKNOWN),
    figures(page, ['Jacket of', 'the face'], SHARE + extra, ({ shares }) => percentText(shares?.jacket ?? null)),
    figures(page, ['Density', 'g/cm³'], DENSITY + extra, ({ density }) => bare(measuredText(density))),
  ];
}

function testLines(test: EnduranceTest, page: AssayPage): string[] {
  const cables = test.cables.filter((c) => c.role !== 'control');
  const all = test.kind === 'amount' ? amountColumns(test, page) : passedColumns(page);
  // Where no clean cut goes through the field, one band for all would say that nothing was parted.
  const columns = cables.some(({ band }) => (band ?? 1) > 1) ? all : all.slice(0, -1);
  return [
    shown([capital(test.test), ...testConditions(test)].join(', '), page),
    ...paragraph(test.sentence, page),
    ...cableTable(page, cables, columns),
    ...test.notes.flatMap((note) => paragraph(note, page)),
    ...paragraph(test.small_samples, page),
  ];
}

function amountColumns({ unit }: EnduranceTest, page: AssayPage): Planned<EnduranceCable>[] {
  return [
    figures(page, ['Failed', 'of'], PIECES, ({ failed, n }) => `${failed} of ${n}`),
    figures(page, ['Half last', unit], HALF + 1, ({ median }) =>
      median?.value == null ? UNKNOWN : plainText(Number(median.value.toPrecision(2)), ''),
    ),
    figures(page, ['from', 'to'], RANGE, ({ median }) => endsText(median?.interval ?? [null, null])),
    figures(page, ['Band'], BAND, ({ band }) => band?.toString() ?? UNKNOWN),
  ];
}

function passedColumns(page: AssayPage): Planned<EnduranceCable>[] {
  return [
    figures(page, ['Came', 'through'], PIECES, ({ survived, n }) => `${survived} of ${n}`),
    figures(page, ['of many', '%'], RANGE, ({ passed }) =>
      passed ? `${Math.floor(100 * passed.interval[0])} to ${Math.ceil(100 * passed.interval[1])}` : UNKNOWN,
    ),
    figures(page, ['Band'], BAND, ({ band }) => band?.toString() ?? UNKNOWN),
  ];
}

/** `56 to 210`; `56 or more`, `up to 210` where an end is open. */
function endsText([low, high]: readonly [number | null, number | null]): string {
  const two = (x: number) => plainText(Number(x.toPrecision(2)), '');
  if (low !== null && high !== null) return rangeText(low, high);
  if (low !== null) return `${two(low)} or more`;
  return high === null ? UNKNOWN : `up to ${two(high)}`;
}

function exposureLines(page: AssayPage): string[] {
  return (page.findings.jacket?.exposures ?? []).flatMap(({ text }) => paragraph(text, page));
}
