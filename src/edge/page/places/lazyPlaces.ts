import type { ComponentType } from 'preact';
import type { Route } from '../store/routeOf.ts';

type Named<P extends Route['place']> = Extract<Route, { place: P }>;

/** A place of a trial that is fetched when somebody first goes there; its props are the route that leads to it. */
interface LazyPlaces {
  cables: ComponentType<Named<'cables'>>;
  plan: ComponentType<Named<'plan'>>;
  bench: ComponentType<Named<'bench'>>;
  inside: ComponentType<Named<'inside'>>;
  bend: ComponentType<Named<'bend'>>;
  jacket: ComponentType<Named<'jacket'>>;
  amps: ComponentType<Named<'amps'>>;
  standing: ComponentType<Named<'standing'>>;
  publish: ComponentType<Named<'publish'>>;
  history: ComponentType<Named<'history'>>;
  phones: ComponentType<Named<'phones'>>;
  pair: ComponentType<Named<'pair'>>;
  /** Stands before the other places on a device that only reads. */
  forReaders: ComponentType<Route>;
}

export type LazyPlace = keyof LazyPlaces;

/** Where each place's program is. Its styles come with it. */
const FETCH: { [P in LazyPlace]: () => Promise<LazyPlaces[P]> } = {
  cables: async () => (await import('./cables/cables.tsx')).Cables,
  plan: async () => (await import('./plan/plan.tsx')).Plan,
  bench: async () => (await import('./bench/bench.tsx')).Bench,
  inside: async () => (await import('./inside/inside.tsx')).Inside,
  bend: async () => (await import('./bend/bend.tsx')).Bend,
  jacket: async () => (await import('./jacket/jacket.tsx')).JacketPlace,
  amps: async () => (await import('./amps/amps.tsx')).Amps,
  standing: async () => (await import('./standing/standing.tsx')).StandingPlace,
  publish: async () => (await import('./publish/publish.tsx')).Publish,
  history: async () => (await import('./history/history.tsx')).History,
  phones: async () => (await import('./phones/phones.tsx')).Phones,
  pair: async () => (await import('./pair/pair.tsx')).Pair,
  forReaders: async () => (await import('./forReaders/forReaders.tsx')).ForReaders,
};

export const LAZY_PLACES = Object.keys(FETCH) as LazyPlace[];

/** What has been fetched; a place that is here is shown at once. */
const fetched: Partial<Record<LazyPlace, ComponentType<never>>> = {};

/** The place's program if it is here already. */
export const placeAtHand = (place: LazyPlace) => fetched[place] ?? null;

/** Fetches a place's program; asking again after a failure tries again. @throws Error when it cannot be fetched. */
export async function fetchPlace(place: LazyPlace): Promise<void> {
  fetched[place] ??= (await FETCH[place]()) as ComponentType<never>;
}

/**
 * Fetches every place once the page has come to rest: a phone that records over a plain connection has no other copy, and
 * must be able to change places while the network is gone. What cannot be fetched now is tried again when it is wanted.
 */
export function fetchPlacesAhead(): void {
  const idle = globalThis.requestIdleCallback ?? ((act: () => void) => setTimeout(act, 300));
  idle(async () => {
    for (const place of LAZY_PLACES) await fetchPlace(place).catch(() => {});
  });
}
