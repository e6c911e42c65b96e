import type { CableStanding, Decide } from '../../findings/shapes/decide.ts';
import { UNKNOWN } from '../figures.ts';
import { chanceText } from '../words/chanceWords.ts';
import { type AssayPage, GAP, LEAST_NAME, paragraph, shown } from './assayPage.ts';
import { displayWidth } from './displayWidth.ts';
import { type TextColumn, tableHead, tableRow } from './textTable.ts';

const BAND = 5;
const CHANCE = 10;
const PRICE = 14;
const WIDEST_NAME = 32;

/** The block on standing: the order in words, what it leans on, then a row for each cable. No lines where the plan states no weights. */
export function standingLines(page: AssayPage): string[] {
  const { decide } = page.findings;
  if (decide === null) return [];
  const priced = decide.cables.some((c) => copperPrice(decide, c) !== UNKNOWN);
  const right = (head: string[], width: number): TextColumn => ({
    head: head.map((line) => shown(line, page)),
    width,
    side: 'right',
  });
  const columns = [
    right(['Band'], BAND),
    right(['Chance', 'first'], CHANCE),
    right(['Near these', 'weights'], CHANCE),
    ...(priced ? [right(['Price, metre', 'and mm² copper'], PRICE)] : []),
  ];
  const taken = columns.reduce((sum, { width }) => sum + width + GAP, 0);
  const longest = Math.max(LEAST_NAME, ...decide.cables.map(({ name }) => displayWidth(shown(name, page))));
  const name: TextColumn = {
    head: ['Cable'],
    width: Math.min(longest, WIDEST_NAME, page.width - taken),
    side: 'left',
    cut: true,
  };
  const rows = decide.cables.flatMap((c) => {
    const cells = [
      shown(c.name, page),
      String(c.band),
      chanceText(c.probability_first),
      chanceText(c.acceptability[0]),
      ...(priced ? [shown(copperPrice(decide, c), page)] : []),
    ];
    return tableRow([name, ...columns], cells, page.glyphs.ellipsis);
  });
  return [
    shown('Standing', page),
    ...paragraph([decide.sentence, decide.taste_sentence].filter((s) => s !== '').join(' '), page),
    ...tableHead([name, ...columns], page.glyphs.rule),
    ...rows,
  ];
}

function copperPrice({ value }: Decide, { cable }: CableStanding): string {
  const found = value.find((v) => v.cable === cable);
  if (!found?.price_per_m_mm2) return UNKNOWN;
  return `${found.price_per_m_mm2.value.toFixed(3)}${found.currency ? ` ${found.currency}` : ''}`;
}
