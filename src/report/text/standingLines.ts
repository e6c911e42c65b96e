import type { CableStanding, Decide } from '../../findings/shapes/decide.ts';
import { UNKNOWN } from '../figures.ts';
import { chanceText } from '../words/chanceWords.ts';
import { type AssayPage, paragraph, shown, WIDEST_NAME } from './assayPage.ts';
import { cableTable, figures } from './cableTable.ts';

const BAND = 5;
const CHANCE = 10;
const PRICE = 14;

/** The block on standing: the order in words, what it leans on, then a row for each cable. No lines where the plan states no weights. */
export function standingLines(page: AssayPage): string[] {
  const { decide } = page.findings;
  if (decide === null) return [];
  const priced = decide.cables.some((c) => copperPrice(decide, c) !== UNKNOWN);
  const right = (head: string[], width: number, cell: (row: CableStanding) => string) =>
    figures(page, head, width, cell);
  const columns = [
    right(['Band'], BAND, ({ band }) => String(band)),
    right(['Chance', 'first'], CHANCE, (c) => chanceText(c.probability_first)),
    right(['Near these', 'weights'], CHANCE, (c) => chanceText(c.acceptability[0])),
    ...(priced ? [right(['Price, metre', 'and mm² copper'], PRICE, (c) => copperPrice(decide, c))] : []),
  ];
  return [
    shown('Standing', page),
    ...paragraph([decide.sentence, decide.taste_sentence].filter((s) => s !== '').join(' '), page),
    ...cableTable(page, decide.cables, columns, WIDEST_NAME),
  ];
}

function copperPrice({ value }: Decide, { cable }: CableStanding): string {
  const found = value.find((v) => v.cable === cable);
  if (!found?.price_per_m_mm2) return UNKNOWN;
  return `${found.price_per_m_mm2.value.toFixed(3)}${found.currency ? ` ${found.currency}` : ''}`;
}
