import { addressOf } from '../../store/routeOf.ts';

/** The ways to paper: labels for the pieces and the cut list. */
export function ToPrint({ trial, pieces }: { trial: string; pieces: number }) {
  if (pieces === 0) return null;
  return (
    <section class="to-print" aria-labelledby="to-print">
      <h2 id="to-print">On paper</h2>
      <div class="buttons">
        <a class="button" href={addressOf({ place: 'plan', trial, sheet: 'labels' })}>
          Labels
        </a>
        <a class="button" href={addressOf({ place: 'plan', trial, sheet: 'flags' })}>
          Flags that wrap the cable
        </a>
        <a class="button" href={addressOf({ place: 'plan', trial, sheet: 'cut-list' })}>
          Cut list
        </a>
      </div>
    </section>
  );
}
