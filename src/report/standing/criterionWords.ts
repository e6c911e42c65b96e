import type { CriterionFound } from '../../findings/shapes/decide.ts';
import { unitSymbol } from '../figures.ts';

const PERCENT = 100;
const DIGITS = 4;

/** Shares of one are shown in per cent: copper of the label's, evenness of the wall. */
export const inPercent = ({ id }: Pick<CriterionFound, 'id'>): boolean => id === 'copper' || id === 'concentricity';

/** The unit that a criterion's ends are shown in; empty for plain numbers. */
export const unitOf = (criterion: Pick<CriterionFound, 'id' | 'unit'>): string =>
  inPercent(criterion) ? '%' : unitSymbol(criterion.unit).replace(/^N m2$/, 'N·m²');

/** An end of a scale as it is shown. */
export function endText(criterion: Pick<CriterionFound, 'id' | 'unit'>, end: number): string {
  return String(Number((inPercent(criterion) ? PERCENT * end : end).toPrecision(DIGITS))).replace('-', '−');
}

/** What was typed for an end, back in the criterion's own unit. */
export const endOf = (criterion: Pick<CriterionFound, 'id'>, typed: number): number =>
  inPercent(criterion) ? typed / PERCENT : typed;

/** `Worth nothing at 70 %, everything at 100 %, and no more beyond.` */
export function scaleSentence(criterion: CriterionFound): string {
  const unit = unitOf(criterion);
  const end = (value: number) => `${endText(criterion, value)}${unit === '' ? '' : ` ${unit}`}`;
  if (criterion.shape === 'threshold')
    return `Worth everything from ${end(criterion.best)} ${criterion.better === 'more' ? 'up' : 'down'}, nothing short of it.`;
  const beyond = criterion.shape === 'flat' ? ', and no more beyond' : ', and on in the same way beyond';
  return `Worth nothing at ${end(criterion.worst)}, everything at ${end(criterion.best)}${beyond}.`;
}
