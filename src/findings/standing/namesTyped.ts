/** Names of criteria within a setting of the plan: plain where that reads back, else in quotation marks, as in CSV. */

/** What ends a name, marks a share or would be lost at its edge when it stands bare. */
const NEEDS_MARKS = /[,;>=\n\r%"]|^\s|\s$/;

/**
 * A name as a setting writes it.
 *
 * @example nameTyped('endurance:hot iron, dry') // '"endurance:hot iron, dry"'
 */
export const nameTyped = (name: string): string =>
  NEEDS_MARKS.test(name) || name === '' ? `"${name.replaceAll('"', '""')}"` : name;

/** What stands between names, so that a quotation mark after it opens one. */
const BETWEEN = ',;>=\n';
/** From a mark that opens a name to the one that closes it; to the end where none does. Within, two marks are one that is meant. */
const MARKED = /"(?:[^"]|"")*"?/y;

/**
 * Cuts a text at some characters, except within quotation marks that open a name. A mark inside a bare name is a part of it, as in
 * `rub over 1/2" edge`.
 */
export function piecesOf(text: string, separators: string): string[] {
  const pieces = [''];
  let opens = true;
  for (let at = 0; at < text.length; ) {
    MARKED.lastIndex = at;
    const taken: string = (opens && MARKED.exec(text)?.[0]) || text[at]!;
    at += taken.length;
    if (taken.length === 1 && separators.includes(taken)) pieces.push('');
    else pieces[pieces.length - 1] += taken;
    opens = taken.length === 1 && (BETWEEN.includes(taken) || (opens && taken.trim() === ''));
  }
  return pieces;
}

/** A name that begins a piece, in lower case, and what follows it; for a bare one everything is name. Null where marks never close. */
export function nameAndRest(piece: string): { name: string; rest: string; marked: boolean } | null {
  const said = piece.trim();
  if (!said.startsWith('"')) return { name: said.toLowerCase(), rest: '', marked: false };
  const closed = /^"((?:[^"]|"")*)"(?!")/.exec(said);
  if (closed === null) return null;
  const name = closed[1]!.replaceAll('""', '"').toLowerCase();
  return { name, rest: said.slice(closed[0].length).trim(), marked: true };
}
