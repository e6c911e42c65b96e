import type { FlexCable, JudgedCable } from '../../findings/shapes/flex.ts';
import { figureText, measuredText, percentText, UNKNOWN } from '../figures.ts';
import { chanceText } from '../words/chanceWords.ts';
import { type AssayPage, extraSign, paragraph, shown } from './assayPage.ts';
import { cableTable, figures, type Planned } from './cableTable.ts';

const STIFFNESS = 15;
const CELSIUS = 5;
const BAND = 5;
const COIL = 12;
const CHANCE = 9;

/** One row: the cable by name, what was measured of it, how it was judged. */
interface FlexRow {
  name: string;
  bent: FlexCable | null;
  judged: JudgedCable | null;
}

/**
 * The block on bending: what bends most easily in words, then a row for each cable with its stiffness, temperature and band, and
 * what the judges make of it. No lines for a trial without a word on bending.
 */
export function flexLines(page: AssayPage): string[] {
  const { flex } = page.findings;
  if (flex === null) return [];
  const rows = rowsOf(page);
  if (rows.length === 0) return paragraph(flex.sentence, page);
  return [
    shown('Bending', page),
    ...paragraph(flex.sentence, page),
    ...cableTable(page, rows, columnsOf(page, rows)),
    ...beside(page),
  ];
}

/** What stands beside the table: pushes, what springs back, what a push does not give back, a paragraph for each cable. */
function beside(page: AssayPage): string[] {
  const said = (page.findings.flex?.cables ?? []).flatMap((cable) => {
    const pushes = cable.pushes.flatMap((p) => {
      if (p.bending_stiffness === null) return [];
      const lost = p.lost_share === null ? '' : `, ${Math.round(100 * p.lost_share)} % of its work not given back`;
      return `${measuredText({ ...p.bending_stiffness, unit: '1' })} by ${p.state === 'worked in' ? 'a push when worked in' : p.state || 'push'}${lost}`;
    });
    const spring = cable.spring_back === null ? [] : [`springs back ${percentText(cable.spring_back)}`];
    const by = cable.method === 'push' ? ['its stiffness is by push'] : [];
    const parts = [...by, ...pushes, ...spring];
    return parts.length === 0 ? [] : paragraph(`${cable.name || cable.cable}: ${parts.join('; ')}.`, page);
  });
  return said.length === 0 ? [] : ['', ...said];
}

/** Cables that were bent or judged, in the order of the trial. */
function rowsOf({ findings }: AssayPage): FlexRow[] {
  return findings.cables.flatMap(({ cable, name }) => {
    const bent = findings.flex?.cables.find((c) => c.cable === cable) ?? null;
    const judged = findings.flex?.judged?.cables.find((c) => c.cable === cable) ?? null;
    return bent || judged ? [{ name: name === '' ? cable : name, bent, judged }] : [];
  });
}

/** Columns with something in them; those of the judges are left out where nobody judged. */
function columnsOf(page: AssayPage, rows: readonly FlexRow[]): Planned<FlexRow>[] {
  const extra = extraSign(page);
  const right = (head: string[], width: number, cell: (row: FlexRow) => string) => figures(page, head, width, cell);
  const columns: Planned<FlexRow>[] = [];
  if (rows.some((r) => r.bent?.bending_stiffness)) {
    columns.push(
      right(['Stiffness', 'N·m²'], STIFFNESS + extra, ({ bent }) => stiffnessText(bent)),
      right(['at', '°C'], CELSIUS, ({ bent }) => bent?.temperature_C?.toFixed(0) ?? UNKNOWN),
      right(['Band'], BAND, ({ bent }) => bent?.band?.toString() ?? UNKNOWN),
    );
  }
  if (rows.some((r) => r.bent?.coil_ratio))
    columns.push(right(['Coil', '× diameter'], COIL + extra, ({ bent }) => measuredText(bent?.coil_ratio ?? null)));
  if (rows.some((r) => r.judged))
    columns.push(
      right(['By hand', 'band'], CHANCE, ({ judged }) => judged?.band?.toString() ?? UNKNOWN),
      right(['Chance', 'easiest'], CHANCE, ({ judged }) =>
        judged?.probability_best == null ? UNKNOWN : chanceText(judged.probability_best),
      ),
    );
  return columns;
}

/** `0.031 ± 0.002`; a figure that leans on a label's mass stands in brackets. */
function stiffnessText(bent: FlexCable | null): string {
  const figure = bent?.bending_stiffness ?? null;
  if (bent === null || figure === null) return UNKNOWN;
  const text = measuredText({ ...figure, unit: '1', condition: undefined });
  return figureText(figure).condition === '' ? text : `(${text})`;
}
