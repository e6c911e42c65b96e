import { capital } from '../../units/capital.ts';
import { numberWord } from '../../units/numberWords.ts';
import type { CableBending } from './flex.ts';
import { listed } from './words.ts';

/** What a cable with bending readings still lacks for a stiffness, as a noun; null where only a coil or a spring-back was read. */
function lackOf({ droops, pushes }: CableBending): string | null {
  if (droops.some((d) => d.shown.overhang_mm > 0 && d.weight === null)) return 'its weight per length';
  if (droops.some((d) => d.shown.overhang_mm === 0)) return 'the length that hung free';
  if (pushes.some((p) => p.shown.span_mm === 0)) return 'the span of its push';
  return droops.length + pushes.length > 0 ? 'a droop or a push that can be used' : null;
}

const REMEDIES: Readonly<Record<string, string>> = {
  'its weight per length': 'Weigh a piece of each and measure its length.',
  'the length that hung free': 'Measure what hangs free of the clamp.',
  'the span of its push': 'Measure from support to support.',
  'a droop or a push that can be used': 'Each sheet says what to do.',
};

/**
 * What stands first where no order can be given although cables were bent: which of them have no stiffness, and what each of
 * those lacks. Empty where none lacks anything.
 */
export function noStiffnessSentence(bending: readonly CableBending[]): string {
  const lacking = bending
    .filter((b) => b.headline === null)
    .flatMap((b) => {
      const lack = lackOf(b);
      return lack === null ? [] : [{ name: b.shown.name, lack }];
    });
  if (lacking.length === 0) return '';
  const kinds = [...new Set(lacking.map((each) => each.lack))];
  const parts = kinds.map((lack) => {
    const names = lacking.filter((each) => each.lack === lack).map((each) => each.name);
    const all = names.length === bending.length && names.length > 1;
    return `${all ? 'each of them' : listed(names)} ${all || names.length === 1 ? 'lacks' : 'lack'} ${lack}`;
  });
  const known = bending.length - bending.filter((b) => b.headline === null).length;
  const count = bending.length;
  const first = `${capital(numberWord(count))} ${count === 1 ? 'cable was' : 'cables were'} bent, and ${known === 0 ? 'none has' : `only ${numberWord(known)} ${known === 1 ? 'has' : 'have'}`} a stiffness yet`;
  const remedy = kinds.length === 1 ? ` ${REMEDIES[kinds[0]]}` : '';
  return `${first}: ${parts.join('; ')}.${remedy}`;
}
