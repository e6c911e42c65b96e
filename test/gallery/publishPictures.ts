/** Cards as committed pictures, from the hand-written findings. */
import { type CardLook, type CardWish, cardSvg } from '../../src/report/publish/cards/card.ts';
import { METHODS } from '../../src/report/publish/cards/methods.ts';
import { fold } from '../../src/trial/fold.ts';
import { quill, rudeNames, sixCables, tollgate } from '../fixtures/findings.ts';

const trial = {
  ...fold([]),
  trial: sixCables.trial,
  title: sixCables.title,
  place: 'Fenwater Rally Club',
};
const source = { findings: sixCables, trial, part: null };
const rude = { findings: rudeNames, trial, part: null };

const card = (wish: Partial<CardWish>, look: Partial<CardLook> = {}, from = source) =>
  cardSvg(
    from,
    { kind: 'one', about: 'inside', cables: [], ...wish },
    { size: '1920x1080', dark: false, transparent: false, ...look },
  );

/** File name → content. */
export const PUBLISH_PICTURES: Readonly<Record<string, () => string>> = {
  'card-one.svg': () => card({ cables: [quill.cable] }),
  'card-one-claim.svg': () => card({ cables: [quill.cable], step: 2 }),
  'card-one-tall-dark.svg': () => card({ cables: [tollgate.cable] }, { size: '1080x1920', dark: true }),
  'card-two.svg': () => card({ kind: 'two', cables: [quill.cable, tollgate.cable] }),
  'card-field.svg': () => card({ kind: 'field' }),
  'card-field-tall.svg': () => card({ kind: 'field' }, { size: '1080x1920' }),
  'card-field-rude-names.svg': () => card({ kind: 'field' }, { size: '1080x1080' }, rude),
  'card-table-so-far.svg': () => card({ kind: 'order' }),
  ...Object.fromEntries(
    METHODS.map(({ method }) => [`card-method-${method}.svg`, () => card({ kind: 'method', method })]),
  ),
  'card-method-tall-dark.svg': () => card({ kind: 'method', method: 'droop' }, { size: '1080x1920', dark: true }),
  'card-method-square-clear.svg': () =>
    card({ kind: 'method', method: 'wall' }, { size: '1080x1080', transparent: true }),
  'card-one-bend.svg': () => card({ cables: [quill.cable], about: 'bend' }),
  'card-one-square.svg': () => card({ cables: [quill.cable] }, { size: '1080x1080' }),
  'card-two-tall.svg': () => card({ kind: 'two', cables: [quill.cable, tollgate.cable] }, { size: '1080x1920' }),
  'card-two-square-dark.svg': () =>
    card({ kind: 'two', cables: [quill.cable, tollgate.cable] }, { size: '1080x1080', dark: true }),
  'card-lower-third.svg': () => card({ kind: 'lower-third', cables: [quill.cable] }, { transparent: true }),
};
