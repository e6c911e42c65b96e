import type { SealAsked } from '../../src/report/publish/seal.ts';

/** A seal as tests ask for it: what is inside, with nothing hidden and no draws. */
export const SEAL_ASKED: SealAsked = {
  part: '1',
  title: '',
  places: ['inside'],
  level: 0.95,
  draws: 0,
  hidden: false,
  at: '2026-11-01T10:00:00Z',
  by: 'Ann',
};
