import type { BenchAct } from '../../../../findings/nextAct.ts';
import { repeatsSpan, repeatsStrip } from '../../../../report/repeatsStrip.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { Picture } from '../../parts/picture.tsx';
import { face } from '../../store/bench/bendHand.ts';
import { displayStep, pieceSoFar, type ShownReading } from '../../store/bench/repeats.ts';
import { unit } from '../../store/bench/typedUnit.ts';

const STRIP = { width: 150, height: 28 };

/** The readings so far of what is in hand: as typed, and as dots on a line. */
export function Repeats({ trial, act }: { trial: Trial; act: BenchAct }) {
  const { specimen, quantity } = act.item;
  const soFar = pieceSoFar(trial, specimen, quantity, unit.value, face.value);
  const span = repeatsSpan([soFar.values], displayStep(trial, quantity, unit.value));
  return (
    <div class="repeats">
      {soFar.readings.length === 0 ? (
        <p class="note">No reading of this yet.</p>
      ) : (
        <ol aria-label="Readings so far">
          {soFar.readings.map((reading) => (
            <One key={reading.reading} reading={reading} face />
          ))}
        </ol>
      )}
      <Picture silent svg={repeatsStrip(soFar, { ...STRIP, theme: variablesTheme, span })} />
    </div>
  );
}

/**
 * A reading as typed, with which way up it was read where it stands among others; one that does not count is struck through,
 * with how it was put aside said aloud.
 */
export function One({ reading, face = false }: { reading: ShownReading; face?: boolean }) {
  const laid = face && reading.face !== '' && <span class="note"> {reading.face}</span>;
  if (reading.standing === 'counted')
    return (
      <li>
        <span class="figure-typed">{reading.text}</span>
        {laid}
      </li>
    );
  return (
    <li>
      <s title={reading.why}>{reading.text}</s>
      <span class="hidden">
        {reading.standing}
        {reading.why === '' ? '' : `: ${reading.why}`}
      </span>
      {laid}
    </li>
  );
}
