/** A piece taken up by the code on its label. */
import { actsLeft, takeUp } from './inHand.ts';
import { announce } from './said.ts';
import { benchWork } from './work.ts';

/** Takes up the first reading still wanted on the piece of that code or name, or its first at all; says when there is none. */
export function takeUpPiece(called: string): void {
  const wanted = called.trim().toLowerCase();
  const isIt = ({ code, specimen }: { code: string; specimen: string }) =>
    code.toLowerCase() === wanted || specimen.toLowerCase() === wanted;
  const item = actsLeft.value.find((act) => isIt(act.item))?.item ?? benchWork.value?.items.find(isIt);
  if (item === undefined) announce(`No reading is planned on a piece called ${called}.`);
  else takeUp(item);
}
