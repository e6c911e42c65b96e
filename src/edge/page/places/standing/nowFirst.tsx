import type { Stood } from './order.tsx';

/**
 * The likeliest two for the first place in one line that stays in sight while something is moved: on narrow pages, or always. The
 * table says the same, so it is not read aloud.
 */
export function NowFirst({ stood, always = false }: { stood: Stood; always?: boolean }) {
  const likely = [...stood.order.cables].sort((a, b) => b.probability_first - a.probability_first).slice(0, 2);
  return (
    <p class={always ? 'now-first always' : 'now-first'} aria-hidden="true">
      First:{' '}
      {likely.map(({ cable, name, probability_first: chance }, at) => (
        <span key={cable}>
          {at > 0 && ', '}
          <bdi dir="auto">{name || cable}</bdi> <b>{Math.round(100 * chance)} %</b>
        </span>
      ))}
    </p>
  );
}
