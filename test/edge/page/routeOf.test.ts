import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addressOf, routeOf } from '../../../src/edge/page/store/routeOf.ts';

describe('routeOf', () => {
  it.each([
    ['/', '', { place: 'shelf' }],
    ['/trial/club', '', { place: 'inside', trial: 'club', cable: null }],
    ['/trial/club/inside', '#quill', { place: 'inside', trial: 'club', cable: 'quill' }],
    ['/trial/a%2Fb/inside/', '', { place: 'inside', trial: 'a/b', cable: null }],
    ['/trial/club/bench', '', { place: 'bench', trial: 'club', slate: false }],
    ['/trial/club/plan', '', { place: 'plan', trial: 'club', sheet: null }],
    ['/trial/club/plan', '#flags', { place: 'plan', trial: 'club', sheet: 'flags' }],
    ['/trial/club/plan', '#tools', { place: 'plan', trial: 'club', sheet: null }],
    ['/trial/club/bend', '', { place: 'bend', trial: 'club', opened: null }],
    ['/trial/club/bend/', '#quill', { place: 'bend', trial: 'club', opened: 'quill' }],
    ['/trial/club/kitchen', '', { place: 'nowhere', path: '/trial/club/kitchen' }],
    ['/trial/%E0%A4%A/inside', '', { place: 'nowhere', path: '/trial/%E0%A4%A/inside' }],
    ['/cables', '', { place: 'cables' }],
    ['/phones', '', { place: 'phones' }],
    ['/pair', '', { place: 'pair', code: '' }],
    ['/pair', '#K7M3QX', { place: 'pair', code: 'K7M3QX' }],
    ['/pair', '#%E0%A4%A', { place: 'pair', code: '' }],
    ['/elsewhere', '', { place: 'nowhere', path: '/elsewhere' }],
  ])('reads %s%s', (path, hash, route) => {
    expect(routeOf(path, hash)).toEqual(route);
  });

  it('takes up the piece that a label names', () => {
    const route = { place: 'bench' as const, trial: 'a b', slate: false, specimen: 'c1&x' };
    const { pathname, hash, search } = new URL(addressOf(route), 'http://127.0.0.1');
    expect(routeOf(pathname, hash, search)).toEqual(route);
    expect(routeOf('/trial/club/bench', '', '?specimen=')).toEqual({ place: 'bench', trial: 'club', slate: false });
  });

  it('leads back to what is printed', () => {
    for (const sheet of ['labels', 'flags', 'cut-list', null] as const) {
      const { pathname, hash } = new URL(addressOf({ place: 'plan', trial: 'club', sheet }), 'http://127.0.0.1');
      expect(routeOf(pathname, hash)).toEqual({ place: 'plan', trial: 'club', sheet });
    }
  });

  it('leads back to what is open at a subject', () => {
    expect(addressOf({ place: 'bend', trial: 'a b', opened: null })).toBe('/trial/a%20b/bend');
    expect(addressOf({ place: 'bend', trial: 'a b', opened: 'x y' })).toBe('/trial/a%20b/bend#x%20y');
  });

  it('leads back to where phones are added', () => {
    expect(addressOf({ place: 'phones' })).toBe('/phones');
    expect(addressOf({ place: 'pair', code: '' })).toBe('/pair');
    expect(addressOf({ place: 'pair', code: 'K7M3QX' })).toBe('/pair#K7M3QX');
  });

  it('leads back to the same place, whatever trial and cable are called', () => {
    const name = fc.string({ unit: 'grapheme', minLength: 1 }).filter((text) => !/\p{Surrogate}/u.test(text));
    fc.assert(
      fc.property(name, fc.option(name), (trial, cable) => {
        const route = { place: 'inside' as const, trial, cable };
        const { pathname, hash } = new URL(addressOf(route), 'http://127.0.0.1');
        // The two names that an address takes for a step up or down cannot be said in a path.
        if (trial === '.' || trial === '..') return;
        expect(routeOf(pathname, hash)).toEqual(route);
      }),
      { seed: 20261125 },
    );
  });
});
