/** Where in the page somebody is. The address bar holds all of it, so that back, reload and a sent link work. */
export type Route =
  | { place: 'shelf' }
  | { place: 'inside'; trial: string; cable: string | null }
  | { place: 'nowhere'; path: string };

/** The route that an address names. `hash` is `#` and the id of the cable whose sheet is open, or empty. */
export function routeOf(path: string, hash: string): Route {
  if (path === '/' || path === '/index.html') return { place: 'shelf' };
  const parts = /^\/trial\/([^/]+)(?:\/([^/]*))?\/?$/.exec(path);
  const trial = parts === null ? null : decoded(parts[1] ?? '');
  const place = parts?.[2] ?? '';
  if (trial === null || (place !== '' && place !== 'inside')) return { place: 'nowhere', path };
  return { place: 'inside', trial, cable: hash.length > 1 ? decoded(hash.slice(1)) : null };
}

/** The address of a route: the inverse of `routeOf`. */
export function addressOf(route: Route): string {
  if (route.place === 'shelf') return '/';
  if (route.place === 'nowhere') return route.path;
  const cable = route.cable === null ? '' : `#${encodeURIComponent(route.cable)}`;
  return `/trial/${encodeURIComponent(route.trial)}/inside${cable}`;
}

/** Percent-decoding that answers null instead of throwing on a damaged address. */
function decoded(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
}
