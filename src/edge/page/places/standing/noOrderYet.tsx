import { addressOf } from '../../store/routeOf.ts';

/** What to do where there is nothing to be ordered. */
export function NoOrderYet({ trial }: { trial: string }) {
  return (
    <>
      <h1>An order takes two cables with something measured on each.</h1>
      <p class="said">
        Weigh, measure or judge pieces of two cables, or give their labels and prices; whatever was found of them can
        then count, by the weights that you choose.
      </p>
      <p class="buttons">
        <a class="button main" href={addressOf({ place: 'bench', trial, slate: false })}>
          To the bench
        </a>
        <a class="button" href={addressOf({ place: 'plan', trial, sheet: null })}>
          To the plan
        </a>
      </p>
    </>
  );
}
