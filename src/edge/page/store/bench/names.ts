/** What things are called at the bench: by code while the trial is blind. */
import { quantityNamed } from '../../../../journal/quantities.ts';
import type { Specimen, Trial } from '../../../../trial/trial.ts';
import { typedText, unitText } from '../../../../units/typedText.ts';

const KINDS: Readonly<Record<string, string>> = {
  whole: 'whole length',
  bend: 'piece to bend',
  apart: 'piece to take apart',
  abuse: 'piece to abuse',
  kept: 'piece kept back',
};

/** Reasons for striking a reading out that come up again and again; anything else is written. */
export const STRIKE_REASONS: readonly string[] = [
  'digits swapped',
  'scale was not at zero',
  'clip or jaw slipped',
  'wrong piece',
  'wrong unit',
];

export const pieceNamed = (trial: Trial, specimen: string): Specimen | null =>
  trial.specimens.find((piece) => piece.specimen === specimen) ?? null;

/** The large sign of a piece: its code; without one its name, unless names are hidden. */
export function signOf(trial: Trial, specimen: string): string {
  const code = pieceNamed(trial, specimen)?.code ?? '';
  if (code !== '') return code;
  return trial.blinding.blind
    ? `piece ${trial.specimens.findIndex((each) => each.specimen === specimen) + 1}`
    : specimen;
}

/** The sign of a cable: the code of one of its pieces; its name, unless names are hidden. */
export function signOfCable(trial: Trial, cable: string): string {
  const code = trial.specimens.find((piece) => piece.cable === cable && piece.code !== '')?.code;
  if (code !== undefined) return code;
  const place = trial.cables.findIndex((each) => each.cable === cable);
  return trial.blinding.blind ? `cable ${place + 1}` : (trial.cables[place]?.name ?? cable);
}

/** `KR, piece to take apart`: enough to tell the pieces of one code apart. */
export function pieceWords(trial: Trial, specimen: string): string {
  const piece = pieceNamed(trial, specimen);
  const kind = KINDS[piece?.kind ?? ''] ?? '';
  const twins = trial.specimens.filter((each) => each.cable === piece?.cable && each.kind === piece?.kind);
  const number = twins.length > 1 ? ` ${twins.findIndex((each) => each.specimen === specimen) + 1}` : '';
  return [signOf(trial, specimen), `${kind}${number}`.trim()].filter((words) => words !== '').join(', ');
}

/** What is known of a piece beside its sign: kind, length, and its cable unless that is hidden. */
export function pieceDetail(trial: Trial, specimen: string): string {
  const piece = pieceNamed(trial, specimen);
  if (piece === null) return '';
  const { cut_length = '', cut_length_unit = '' } = piece.row;
  const length = cut_length === '' ? '' : `${cut_length} ${cut_length_unit || 'mm'}`;
  const cable = trial.cables.find((each) => each.cable === piece.cable)?.name ?? piece.cable;
  const kind = KINDS[piece.kind] ?? 'piece';
  return [`${kind.charAt(0).toUpperCase()}${kind.slice(1)}`, length, trial.blinding.blind ? '' : cable]
    .filter((words) => words !== '')
    .join(', ');
}

/** A quantity as a headline: `Mass of the conductor`. */
export function quantityHead(quantity: string): string {
  const name = quantityNamed(quantity)?.name ?? quantity.replaceAll('_', ' ');
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** `39.27 g` as typed; `0.971 mΩ`. */
export const valueWords = typedText;

/** A unit as printed: `mohm` → `mΩ`; what is not understood stays as typed. */
export const unitWords = unitText;
