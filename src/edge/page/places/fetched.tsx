import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Frame } from '../parts/frame.tsx';
import type { Route } from '../store/routeOf.ts';
import { fetchPlace, type LazyPlace, placeAtHand } from './lazyPlaces.ts';

/** A place whose program is fetched when it is first wanted. */
export function Fetched({ place, here }: { place: LazyPlace; here: Route }) {
  const [failed, setFailed] = useState(false);
  const [, setArrived] = useState(0);
  const fetchNow = () => {
    setFailed(false);
    fetchPlace(place).then(
      () => setArrived((count) => count + 1),
      () => setFailed(true),
    );
  };
  const Place = placeAtHand(place) as ComponentType<Route> | null;
  useEffect(() => {
    if (Place === null) fetchNow();
  }, []);
  if (Place !== null) return <Place {...here} />;
  return (
    <Frame title="Cupel" places={[{ name: 'Shelf', href: '/', here: false, state: '' }]}>
      {failed && (
        <>
          <h1>This place could not be fetched.</h1>
          <p>
            The bench computer is out of reach. What was recorded on this device is kept; leave the page open until the
            computer can be reached again.
          </p>
          <p>
            <button type="button" onClick={fetchNow}>
              Try again
            </button>
          </p>
        </>
      )}
    </Frame>
  );
}
