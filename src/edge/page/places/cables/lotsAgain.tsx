import { nameWithin, quantityOf } from '../../../../findings/across/quantities.ts';
import { driftStrip } from '../../../../report/across/driftStrip.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { HowFold } from '../../parts/howFold.tsx';
import { Picture } from '../../parts/picture.tsx';
import { lots, quantityId } from '../../store/across/chosenCables.ts';

/** Width of one strip, px. */
const STRIP = 300;
/** More lots than this are counted, not drawn. */
const MOST = 6;

/** A day, which no line may break. */
const DAY = /\d{4}-\d\d-\d\d/g;
const unbroken = (day: string) => day.replaceAll('-', '\u2011');

/** Lots that were measured again, each as a small strip over time. */
export function LotsAgain() {
  const all = lots.value;
  return (
    <section class="lots-again" aria-labelledby="lots-again">
      <h2 id="lots-again">Lots measured again: {nameWithin(quantityOf(quantityId.value))}</h2>
      {all.length === 0 ? (
        <p class="note">
          No lot has this figure from two trials. Type the lot or date code of a cable under Plan, and measure it again
          another day.
        </p>
      ) : (
        <ul class="lots">
          {all.slice(0, MOST).map((lot) => (
            <li key={`${lot.name} ${lot.lot}`}>
              <Picture silent svg={driftStrip(lot, { width: STRIP, theme: variablesTheme })} />
              <p>
                <bdi dir="auto">{lot.sentence.replace(DAY, unbroken)}</bdi>
              </p>
              <HowFold within>
                <p>{lot.howWeKnow}</p>
              </HowFold>
            </li>
          ))}
        </ul>
      )}
      {all.length > MOST && <p class="note">And {all.length - MOST} more lots; those with a change stand first.</p>}
    </section>
  );
}
