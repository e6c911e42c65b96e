import { failsOnMetal, headlineClaim } from '../../findings/cableOutcome.ts';
import { isWide } from '../../findings/measured.ts';
import type { CableFindings } from '../../findings/schema.ts';
import { figureColumn } from '../figureColumn.ts';
import { type FigureText, UNKNOWN } from '../figures.ts';
import { type AssayPage, extraSign, GAP, LEAST_NAME, nameColumns, rowName, shown, WIDEST_NAME } from './assayPage.ts';
import { roomOf } from './cableTable.ts';
import { truncate } from './displayWidth.ts';
import { type Cell, type TextColumn, tableHead, tableRow } from './textTable.ts';
import { wrap } from './wrap.ts';

const AREA = 13;
const GAUGE = 8;
const SHARE = 12;
const METAL = 11;
const OUTCOME = 11;
/** What stands where the readings leave it open. */
const NOT_TOLD = 'not told';

/** In a column of gauges, where the gauge is told in words. */
const NO_NUMBER: FigureText = { value: '', plusMinus: '', unit: '', condition: '' };

type Key = 'name' | 'area' | 'gauge' | 'share' | 'metal' | 'outcome';

interface Planned {
  key: Key;
  column: TextColumn;
}

/** The table's rows under their heads: area, gauge, share of the label's copper, metal, and the outcome in words. */
export function assayRows(page: AssayPage): string[] {
  const { cables, units, glyphs } = page;
  if (cables.length === 0) return [];
  const areas = figureColumn(
    cables.map((cable) => cable.conductor_area),
    units,
  );
  const shares = figureColumn(
    cables.map((cable) => cable.copper_of_claim),
    units,
    'percent',
  );
  const byGauge = units.area === 'awg';
  // Sizes above 1 have no number: their gauge is a phrase on a line of its own, as it is where areas stand first.
  const numbered = areas.map((area) => (byGauge && area.unit !== 'AWG' && area.unit !== '' ? NO_NUMBER : area));
  const areaCells = aligned(numbered, page);
  const metric = byGauge
    ? aligned(
        figureColumn(
          cables.map((cable) => cable.conductor_area),
          { ...units, area: 'mm2' },
        ),
        page,
      )
    : [];
  const shareCells = aligned(shares, page);
  const plan = columnPlan(page, byGauge ? 'AWG' : (areas.find((area) => area.unit !== '')?.unit ?? 'mm²'));
  const columns = plan.map(({ column }) => column);
  const rows = cables.flatMap((cable, i) => {
    const gauge = byGauge && numbered[i] === areas[i] ? '' : shown(gaugeText(cable), page);
    const condition = shown(areas[i]!.condition, page);
    const cells: Record<Key, Cell> = {
      name: nameLines(rowName(cable, page), plan[0]!.column.width, glyphs.ellipsis),
      area: condition === '' ? areaCells[i]! : [areaCells[i]!, condition],
      gauge: byGauge ? metric[i]! : gauge.length <= GAUGE ? gauge : '',
      share: shareCells[i]!,
      metal: shown(cable.metal_found ?? (cable.conductor_area === null ? UNKNOWN : NOT_TOLD), page),
      outcome: outcomeCell(cable, page),
    };
    const row = tableRow(
      columns,
      plan.map(({ key }) => cells[key]),
      glyphs.ellipsis,
    );
    // A phrase such as 'between 1/0 and 2/0, 40 % of the way' has a line of its own.
    const phrase =
      gauge === '' || (!byGauge && gauge.length <= GAUGE)
        ? []
        : wrap(gauge, page.width - GAP).map((line) => `  ${line}`);
    return [...row, ...phrase];
  });
  return [...tableHead(columns, glyphs.rule), ...rows];
}

/** A name on two lines at most, the second cut where more is left. */
function nameLines(name: string, width: number, ellipsis: string): string[] {
  const lines = wrap(name, width);
  return lines.length <= 2 ? lines : [lines[0]!, truncate(lines.slice(1).join(' '), width, ellipsis)];
}

/** The columns that the width holds: the gauge goes first, then the metal; the name takes what it needs of the rest. */
function columnPlan(page: AssayPage, unit: string): Planned[] {
  const extra = extraSign(page);
  const head = (...lines: string[]): string[] => lines.map((line) => shown(line, page));
  let kept: Planned[] = [
    { key: 'area', column: { head: head('Metal area', unit), width: AREA + extra, side: 'right' } },
    {
      key: 'gauge',
      column:
        page.units.area === 'awg'
          ? { head: head('Area', 'mm²'), width: AREA + extra, side: 'right' }
          : { head: head('Gauge', 'AWG'), width: GAUGE, side: 'right' },
    },
    { key: 'share', column: { head: head('Of label’s', 'copper, %'), width: SHARE + extra, side: 'right' } },
    { key: 'metal', column: { head: head('Metal', 'found'), width: METAL, side: 'left' } },
    { key: 'outcome', column: { head: head('Copper', 'claim'), width: OUTCOME, side: 'left' } },
  ];
  for (const key of ['gauge', 'metal']) {
    if (page.width - roomOf(kept) < LEAST_NAME) kept = kept.filter((planned) => planned.key !== key);
  }
  const width = nameColumns(page, LEAST_NAME, Math.min(WIDEST_NAME, page.width - roomOf(kept)));
  return [{ key: 'name', column: { head: ['Cable'], width, side: 'left', cut: true } }, ...kept];
}

/** `34.8 ± 0.3` with the signs of all rows under one another; `33 to 79` and `—` end where these do. */
function aligned(figures: readonly FigureText[], page: AssayPage): string[] {
  const withSign = figures.filter(({ plusMinus }) => plusMinus !== '');
  const valueWidth = Math.max(0, ...withSign.map(({ value }) => shown(value, page).length));
  const plusWidth = Math.max(0, ...withSign.map(({ plusMinus }) => shown(plusMinus, page).length));
  return figures.map(({ value, plusMinus }) => {
    if (plusMinus === '') return shown(value, page);
    const left = shown(value, page).padStart(valueWidth);
    return `${left} ${shown('±', page)} ${shown(plusMinus, page).padEnd(plusWidth)}`;
  });
}

/** `2.1`, or the whole phrase for sizes between the aughts; `—` when not known, and no single size for a wide area. */
function gaugeText({ conductor_area: area, effective_gauge_text: text }: CableFindings): string {
  if (area !== null && isWide(area)) return NOT_TOLD;
  return text?.replace(/^about /, '').replace(/ AWG$/, '') ?? UNKNOWN;
}

function outcomeCell(cable: CableFindings, page: AssayPage): Cell {
  const outcome = headlineClaim(cable)?.outcome ?? null;
  if (outcome === null) return shown(UNKNOWN, page);
  return failsOnMetal(cable) ? [outcome, 'on metal'] : outcome;
}
