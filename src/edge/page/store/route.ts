import { signal } from '@preact/signals';
import { addressOf, type Route, routeOf } from './routeOf.ts';

/** The place that the address bar names now. */
export const route = signal<Route>(routeOf(location.pathname, location.hash, location.search));

/** Goes to a place and puts it in the browser's history. */
export function goTo(next: Route): void {
  history.pushState(null, '', addressOf(next));
  route.value = next;
  scrollTo(0, 0);
}

/** Follows the back button, and turns plain clicks on the page's own links into changes of place. */
export function followLinks(): void {
  const read = () => {
    // The link past the head of the page leads within the place, to no other.
    if (location.hash === '#main') return;
    route.value = routeOf(location.pathname, location.hash, location.search);
  };
  addEventListener('popstate', read);
  document.addEventListener('click', (event) => {
    if (
      event.defaultPrevented ||
      event.button !== 0 ||
      event.metaKey ||
      event.ctrlKey ||
      event.shiftKey ||
      event.altKey
    )
      return;
    const link = event.target instanceof Element ? event.target.closest('a') : null;
    if (link === null || link.target !== '' || link.hasAttribute('download') || link.origin !== location.origin) return;
    if (link.pathname === location.pathname && link.hash !== '') return;
    event.preventDefault();
    goTo(routeOf(link.pathname, link.hash, link.search));
  });
}
