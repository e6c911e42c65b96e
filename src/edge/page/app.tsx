import { Bench } from './places/bench/bench.tsx';
import { History } from './places/history/history.tsx';
import { Inside } from './places/inside/inside.tsx';
import { Nowhere } from './places/nowhere.tsx';
import { Pair } from './places/pair/pair.tsx';
import { Phones } from './places/phones/phones.tsx';
import { Plan } from './places/plan/plan.tsx';
import { Shelf } from './places/shelf/shelf.tsx';
import { route } from './store/route.ts';

/** The page: the place that the address names. */
export function App() {
  const now = route.value;
  if (now.place === 'shelf') return <Shelf />;
  if (now.place === 'phones') return <Phones />;
  if (now.place === 'pair') return <Pair code={now.code} />;
  if (now.place === 'inside') return <Inside key={now.trial} trial={now.trial} cable={now.cable} />;
  if (now.place === 'plan') return <Plan key={now.trial} trial={now.trial} sheet={now.sheet} />;
  if (now.place === 'bench')
    return <Bench key={now.trial} trial={now.trial} slate={now.slate} specimen={now.specimen} />;
  if (now.place === 'history') return <History key={now.trial} trial={now.trial} at={now.at} />;
  return <Nowhere path={now.path} />;
}
