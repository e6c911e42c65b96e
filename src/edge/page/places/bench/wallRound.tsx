import '../../styles/wallRound.css';
import { hourOf, WALL_HOURS, wallsRead } from '../../../../findings/bench/wallHours.ts';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import { Switch } from '../../parts/switch.tsx';
import { chooseWallHour, wallHour } from '../../store/bench/wallHand.ts';
import { folded } from '../../store/journal/journal.ts';

/** Six places round the cut face, each in its turn. */
export function WallRound({ act }: { act: BenchAct }) {
  const [trial, hour] = [folded.value, wallHour.value];
  if (trial === null || hour === null || act.item.quantity !== 'wall_thickness') return null;
  const read = wallsRead(trial, act.item.specimen);
  const begun = read.some((n) => n > 0);
  return (
    <div class="wall-round">
      <p>
        <b>Read the wall at {hourOf(hour)} o’clock.</b>{' '}
        {begun
          ? 'Keep the piece as it lies and go round with the clock.'
          : 'Turn the face until its thinnest place is at 12, then go round with the clock.'}{' '}
        The place is written down by itself.
      </p>
      <Switch
        legend="Where round the face"
        choices={WALL_HOURS.map((place, i) => [
          place,
          `${hourOf(place)}${read[i]! > 0 ? ' •' : ''}`,
          `${hourOf(place)} o’clock${read[i]! > 0 ? `, read ${read[i] === 1 ? 'once' : `${read[i]} times`}` : ''}`,
        ])}
        value={hour}
        onChoose={chooseWallHour}
      />
    </div>
  );
}
