import { Fetched } from './places/fetched.tsx';
import { Nowhere } from './places/nowhere.tsx';
import { Shelf } from './places/shelf/shelf.tsx';
import { readsOnly } from './store/devices.ts';
import { isOpenToReaders } from './store/readerSees.ts';
import { route } from './store/route.ts';

/** The page: the place that the address names. */
export function App() {
  const now = route.value;
  if (now.place === 'shelf') return <Shelf />;
  if (now.place === 'nowhere') return <Nowhere path={now.path} />;
  const trial = 'trial' in now ? now.trial : '';
  if (readsOnly.value && !isOpenToReaders(now))
    return <Fetched key={`for readers ${trial}`} place="forReaders" here={now} />;
  return <Fetched key={`${now.place} ${trial}`} place={now.place} here={now} />;
}
