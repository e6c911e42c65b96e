import type { SheetKind } from '../worker/jobs.ts';

/** Where in the page somebody is. The address bar holds all of it, so that back, reload and a sent link work. */
export type Route =
  | { place: 'shelf' }
  /** Every cable of every trial. */
  | { place: 'cables' }
  /** Adding phones, at the bench computer. */
  | { place: 'phones' }
  /** Adding this phone; `code` as it stood in the address, or empty. */
  | { place: 'pair'; code: string }
  | { place: 'inside'; trial: string; cable: string | null }
  /** `sheet`: what is shown as it will be printed; null for the plan itself. */
  | { place: 'plan'; trial: string; sheet: SheetKind | null }
  /** `slate`: the filming clock fills the screen. `specimen`: code or name of a piece to take up, as a label's QR has it. */
  | { place: 'bench'; trial: string; slate: boolean; specimen?: string }
  /** `at`: the entry up to which is looked back; null for now. */
  | { place: 'history'; trial: string; at: string | null }
  /** What follows from the readings, by subject. `opened`: what is open there, such as a cable; null for nothing. */
  | { place: SubjectPlace; trial: string; opened: string | null }
  | { place: 'nowhere'; path: string };

/** Places of a trial whose address is made of the place and of what is open there. */
export const SUBJECT_PLACES = ['bend', 'jacket', 'amps', 'standing', 'publish'] as const;
export type SubjectPlace = (typeof SUBJECT_PLACES)[number];

/** The route that an address names. `hash` is `#` and what is open there: a cable's sheet, the slate, an earlier entry. */
export function routeOf(path: string, hash: string, search = ''): Route {
  if (path === '/' || path === '/index.html') return { place: 'shelf' };
  if (path === '/cables') return { place: 'cables' };
  if (path === '/phones') return { place: 'phones' };
  if (path === '/pair') return { place: 'pair', code: decoded(hash.slice(1)) ?? '' };
  const parts = /^\/trial\/([^/]+)(?:\/([^/]*))?\/?$/.exec(path);
  const trial = parts === null ? null : decoded(parts[1] ?? '');
  const place = parts?.[2] ?? '';
  if (trial === null) return { place: 'nowhere', path };
  const opened = hash.length > 1 ? decoded(hash.slice(1)) : null;
  if (place === 'plan') return { place, trial, sheet: SHEETS.find((sheet) => sheet === opened) ?? null };
  if (place === 'bench') return { place, trial, slate: opened === 'slate', ...pieceIn(search) };
  if (place === 'history') return { place, trial, at: opened };
  const subject = SUBJECT_PLACES.find((name) => name === place);
  if (subject !== undefined) return { place: subject, trial, opened };
  if (place !== '' && place !== 'inside') return { place: 'nowhere', path };
  return { place: 'inside', trial, cable: opened };
}

function pieceIn(search: string): { specimen?: string } {
  const specimen = new URLSearchParams(search).get('specimen') ?? '';
  return specimen === '' ? {} : { specimen };
}

/** The address of a route: the inverse of `routeOf`. */
export function addressOf(route: Route): string {
  if (route.place === 'shelf') return '/';
  if (route.place === 'cables') return '/cables';
  if (route.place === 'phones') return '/phones';
  if (route.place === 'pair') return `/pair${route.code === '' ? '' : `#${encodeURIComponent(route.code)}`}`;
  if (route.place === 'nowhere') return route.path;
  const opened = openedIn(route);
  const piece =
    route.place === 'bench' && route.specimen ? `?${new URLSearchParams({ specimen: route.specimen })}` : '';
  return `/trial/${encodeURIComponent(route.trial)}/${route.place}${piece}${opened === null ? '' : `#${encodeURIComponent(opened)}`}`;
}

const SHEETS: readonly SheetKind[] = ['labels', 'flags', 'cut-list'];

function openedIn(route: Exclude<Route, { place: 'shelf' | 'cables' | 'phones' | 'pair' | 'nowhere' }>): string | null {
  if (route.place === 'bench') return route.slate ? 'slate' : null;
  if (route.place === 'plan') return route.sheet;
  if (route.place === 'history') return route.at;
  return route.place === 'inside' ? route.cable : route.opened;
}

/** Percent-decoding that answers null instead of throwing on a damaged address. */
function decoded(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
}
