import { scaleSentence } from '../../../../report/standing/criterionWords.ts';
import { worthStrip } from '../../../../report/standing/worthStrip.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { Picture } from '../../parts/picture.tsx';
import type { Stood } from './order.tsx';

const STRIP = 200;
const PERCENT = 100;

/** One cable: where it stands on each scale that counts, and what would bring it to the first place. */
export function StandingSheet({ stood, cable }: { stood: Stood; cable: string }) {
  const { decide } = stood;
  const found = decide.cables.find((c) => c.cable === cable);
  if (!found) return null;
  const rows = found.worth.flatMap(({ criterion, worth, known }) => {
    const scale = decide.criteria.find(({ id }) => id === criterion);
    return scale ? [{ scale, worth, known }] : [];
  });
  return (
    <div class="sheet standing-sheet">
      <p class="said">{noBreak(found.to_come_first_text)}</p>
      <h3>Where it stands on each scale that counts</h3>
      <ul>
        {rows.map(({ scale, worth, known }) => (
          <li key={scale.id}>
            <span>
              {scale.name} <span class="note">counts {Math.round(PERCENT * scale.weight)}</span>
            </span>
            <Picture
              svg={worthStrip(worth, {
                width: STRIP,
                theme: variablesTheme,
                known,
                description: known
                  ? `${scale.name}: about ${Math.round(PERCENT * Math.min(1, Math.max(0, worth)))} hundredths of the way to its best end.`
                  : `${scale.name}: not measured, anything on the scale was allowed for.`,
              })}
            />
            <span class="note">
              {known ? scaleSentence(scale) : 'Not measured: anything on its scale was allowed for.'}
            </span>
          </li>
        ))}
      </ul>
      <p class="note">{noBreak(found.central_text)}</p>
    </div>
  );
}
