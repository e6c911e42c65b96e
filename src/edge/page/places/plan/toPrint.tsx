import { addressOf } from '../../store/routeOf.ts';

interface ToPrintProps {
  trial: string;
  pieces: number;
  /** The cut list names cables, so it is left out while the trial goes by codes. */
  byCodes?: boolean;
}

/** The ways to paper: labels for the pieces and the cut list. */
export function ToPrint({ trial, pieces, byCodes = false }: ToPrintProps) {
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
        {!byCodes && (
          <a class="button" href={addressOf({ place: 'plan', trial, sheet: 'cut-list' })}>
            Cut list
          </a>
        )}
      </div>
    </section>
  );
}
