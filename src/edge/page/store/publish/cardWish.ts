import { signal } from '@preact/signals';
import type { Findings } from '../../../../findings/schema.ts';
import { aboutsIn, type CardLook, type CardWish } from '../../../../report/publish/cards/card.ts';
import { METHODS } from '../../../../report/publish/cards/methods.ts';

/** The card that is looked at; cables of another trial in it are passed over. */
export const cardWish = signal<CardWish>({ kind: 'one', about: 'inside', cables: [] });
export const cardLook = signal<CardLook>({ size: '1920x1080', dark: false, transparent: false });

export function changeWish(next: Partial<CardWish>): void {
  cardWish.value = { ...cardWish.peek(), ...next };
}

export function changeLook(next: Partial<CardLook>): void {
  cardLook.value = { ...cardLook.peek(), ...next };
}

/** The wish with what it lacks filled in from the findings: the first cables, the first thing that was measured. */
export function wishFor(wish: CardWish, findings: Findings): CardWish {
  const known = findings.cables.filter(({ role }) => role !== 'control').map(({ cable }) => cable);
  const [first = known[0], second = known.find((cable) => cable !== first)] = [
    known.find((cable) => cable === wish.cables[0]),
    known.find((cable) => cable === wish.cables[1]),
  ];
  const abouts = aboutsIn(findings);
  const about = abouts.includes(wish.about) ? wish.about : (abouts[0] ?? 'inside');
  const count = wish.kind === 'two' ? 2 : wish.kind === 'one' || wish.kind === 'lower-third' ? 1 : 0;
  return {
    kind: wish.kind,
    about,
    cables: [first, second].slice(0, count).filter((cable) => cable !== undefined),
    ...(wish.kind === 'method' ? { method: wish.method ?? METHODS[0]!.method } : {}),
    ...(wish.kind === 'one' && wish.step !== undefined ? { step: wish.step } : {}),
  };
}
