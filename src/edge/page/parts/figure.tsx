import type { Measured } from '../../../findings/schema.ts';
import { type FigureText, figureText, percentParts, unitSymbol } from '../../../report/figures.ts';
import type { DisplayUnits } from '../../../units/display.ts';
import { units as chosen } from '../store/units.ts';

interface FigureProps {
  of: Measured;
  /** The units to show it in; those chosen on the page when left out. */
  units?: DisplayUnits;
  /** False where the unit stands in the head of the column already. */
  unit?: boolean;
  /** A ratio in per cent. */
  percent?: boolean;
}

/** A finding: the value, its ± and its unit; the condition below where it has one. Never a value alone. */
export function Figure({ of, units = chosen.value, unit = true, percent = false }: FigureProps) {
  return <FigureOf text={percent ? percentParts(of) : figureText(of, units)} unit={unit} />;
}

/** A finding that has been put into words already. */
export function FigureOf({ text, unit }: { text: FigureText; unit: boolean }) {
  return (
    <span class="figure">
      <b>{text.value}</b>
      {text.plusMinus !== '' && <span>{`\u00a0±\u00a0${text.plusMinus}`}</span>}
      {unit && text.unit !== '' && <span>{`\u00a0${text.unit}`}</span>}
      {text.condition !== '' && <span class="if">{text.condition}</span>}
    </span>
  );
}

/** The same in parts, for a sentence. */
export function figureParts(of: Measured): FigureText {
  return figureText(of, chosen.value);
}

/** The unit that figures of a kind are shown in now, as it stands in the head of a column. */
export function unitHead(unit: string, units: DisplayUnits): string {
  const one: Measured = { value: 1, unit, u: 0, interval: [1, 1], level: 1, from: [] };
  return unit === 'mm2' && units.area !== 'kcmil' ? unitSymbol('mm2') : figureText(one, units).unit;
}
