import type { CableFindings, Findings } from '../../../findings/schema.ts';
import type { SealedPart, Trial } from '../../../trial/trial.ts';
import { darkTheme, lightTheme } from '../../theme.ts';
import { shownCables } from '../document/overview.ts';
import { ABOUTS, type About } from './aspects.ts';
import { Canvas, type CardSize } from './canvas.ts';
import { fieldCard, MOST_ON_A_CARD } from './fieldCard.ts';
import { lowerThird } from './lowerThird.ts';
import { methodCard } from './methodCard.ts';
import { METHODS } from './methods.ts';
import { oneCard, REVEAL_STEPS } from './oneCard.ts';
import { orderCard } from './orderCard.ts';
import type { CardFoot } from './pieces.ts';
import { twoCard } from './twoCard.ts';

export const CARD_KINDS = ['one', 'two', 'field', 'order', 'method', 'lower-third'] as const;
export type CardKind = (typeof CARD_KINDS)[number];

export interface CardWish {
  kind: CardKind;
  about: About;
  /** Short names of cables: one for `one` and `lower-third`, two for `two`; all compared ones for `field` when empty. */
  cables: readonly string[];
  /** For `method`. */
  method?: string;
  /** For `one`: how much is shown, 1 to 4; all when left out. */
  step?: number;
}

export interface CardLook {
  size: CardSize;
  dark: boolean;
  /** The ground left out: text and lines keep a light edge. */
  transparent: boolean;
}

export interface CardSource {
  findings: Findings;
  trial: Trial;
  part: SealedPart | null;
}

/** Why a card cannot be made as wished. */
export class NoCard extends Error {}

/** Who and which part, for the foot of every card. */
export function cardFoot({ trial, part }: Pick<CardSource, 'trial' | 'part'>): CardFoot {
  const sealed = part?.at ? `sealed ${part.at.slice(0, 10)}` : '';
  return {
    who: trial.place || trial.title || trial.trial,
    part: part === null ? 'not sealed' : [`part ${part.part}`, sealed].filter((text) => text !== '').join(', '),
  };
}

function cableNamed(findings: Findings, id: string): CableFindings {
  const found = findings.cables.find(({ cable, name }) => cable === id || name === id);
  if (found) return found;
  throw new NoCard(`There is no cable "${id}"; there are ${findings.cables.map(({ cable }) => cable).join(', ')}.`);
}

/** A card as SVG. @throws NoCard with one sentence. */
export function cardSvg(source: CardSource, wish: CardWish, look: CardLook): string {
  const { findings } = source;
  const canvas = new Canvas(look.size, look.dark ? darkTheme : lightTheme, look.transparent);
  const foot = cardFoot(source);
  const { kind, about, step } = wish;
  const cables = wish.cables.map((id) => cableNamed(findings, id));
  const [first, second] = cables;
  if (kind === 'method') {
    const method = METHODS.find((m) => m.method === wish.method);
    if (!method) throw new NoCard(`A method card needs one of ${METHODS.map((m) => m.method).join(', ')}.`);
    return methodCard(canvas, method, { foot });
  }
  if (kind === 'order')
    return orderCard(
      canvas,
      findings,
      shownCables(findings).filter((c) => c.role === 'compared'),
      { foot },
    );
  if (kind === 'field') {
    const field = cables.length > 0 ? cables : shownCables(findings);
    if (field.length === 0) throw new NoCard('There are no cables yet.');
    if (field.length > MOST_ON_A_CARD)
      throw new NoCard(`One card holds ${MOST_ON_A_CARD} cables and there are ${field.length}; name those to show.`);
    return fieldCard(canvas, findings, field, { about, foot });
  }
  if (!first) throw new NoCard('Name the cable that the card is about.');
  if (kind === 'two') {
    if (!second) throw new NoCard('Name two cables for a card of two.');
    if (second === first) throw new NoCard(`A card of two shows two cables; ${first.name} was named twice.`);
    return twoCard(canvas, findings, [first, second], { about, foot });
  }
  if (kind === 'lower-third') return lowerThird(canvas, findings, first, { about });
  return oneCard(canvas, findings, first, { about, step, foot });
}

/** What a trial has figures for. */
export function aboutsIn({ flex, jacket, current, cables }: Findings): About[] {
  const has: Readonly<Record<About, boolean>> = {
    inside: cables.some((c) => c.conductor_area !== null),
    bend: flex?.cables.some((c) => c.bending_stiffness !== null) ?? false,
    jacket: jacket?.cables.some((c) => c.wall !== null) ?? false,
    amps: current?.cables.some((c) => c.carrying !== null) ?? false,
  };
  return ABOUTS.filter((about) => has[about]);
}

export interface NamedCard {
  /** File name without its ending: nothing of a cable's name in it that a disk would not take. */
  name: string;
  wish: CardWish;
}

const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '') || 'cable';

/** Every card that a trial has something for: each cable in its steps, its lower third, the field, the order, the methods used. */
export function allCards(findings: Findings): NamedCard[] {
  const abouts = aboutsIn(findings);
  const cables = shownCables(findings);
  const of = cables.flatMap(({ cable }, i): NamedCard[] => {
    const id = `${String(i + 1).padStart(2, '0')}-${plain(cable)}`;
    const steps = abouts.includes('inside')
      ? Array.from(
          { length: REVEAL_STEPS },
          (_, s): NamedCard => ({
            name: `${id}-inside-${s + 1}`,
            wish: { kind: 'one', about: 'inside', cables: [cable], step: s + 1 },
          }),
        )
      : [];
    const others = abouts
      .filter((about) => about !== 'inside')
      .map((about): NamedCard => ({ name: `${id}-${about}`, wish: { kind: 'one', about, cables: [cable] } }));
    const strip: NamedCard = {
      name: `${id}-lower-third`,
      wish: { kind: 'lower-third', about: abouts[0] ?? 'inside', cables: [cable] },
    };
    return [...steps, ...others, strip];
  });
  const field = cables.length <= MOST_ON_A_CARD ? abouts : [];
  return [
    ...of,
    ...field.map((about): NamedCard => ({ name: `field-${about}`, wish: { kind: 'field', about, cables: [] } })),
    { name: 'order', wish: { kind: 'order', about: 'inside', cables: [] } },
    ...METHODS.map(
      ({ method }): NamedCard => ({
        name: `method-${method}`,
        wish: { kind: 'method', about: 'inside', cables: [], method },
      }),
    ),
  ];
}
