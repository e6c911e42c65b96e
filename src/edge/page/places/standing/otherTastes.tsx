import type { CableStanding, Decide } from '../../../../findings/shapes/decide.ts';
import { chanceBar } from '../../../../report/standing/chanceBar.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { chanceText } from '../../../../report/words/chanceWords.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { capital } from '../../../../units/capital.ts';
import { Name } from '../../parts/name.tsx';
import { Picture } from '../../parts/picture.tsx';

const BAR = 120;

/** Measurement and taste kept apart, and for each cable what would have to matter more. */
export function OtherTastes({ decide }: { decide: Decide }) {
  return (
    <section class="tastes">
      <h2>If other things mattered</h2>
      <p class="said">{noBreak(decide.taste_sentence)}</p>
      <table class="tastes-table">
        <caption class="hidden">Chance of the first place, and what would change it</caption>
        <thead>
          <tr>
            <th scope="col">Cable</th>
            <th scope="col">
              First at these weights
              <br />
              <span class="note">doubt about the measurements</span>
            </th>
            <th scope="col">
              First at weights near them
              <br />
              <span class="note">the same, and taste</span>
            </th>
            <th scope="col">What would have to matter more</th>
          </tr>
        </thead>
        <tbody>
          {decide.cables.map((cable) => (
            <tr key={cable.cable}>
              <th scope="row">
                <Name>{cable.name || cable.cable}</Name>
              </th>
              <td data-head="First at these">
                <Chance chance={cable.probability_first} />
              </td>
              <td data-head="At weights near">
                <Chance chance={cable.acceptability[0]!} />
              </td>
              <td class="words">{noBreak(withoutName(cable))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** `Counts would have to …` without saying the name again that the row has already. */
function withoutName({ name, to_come_first_text: text }: CableStanding): string {
  const rest = text.startsWith(`${name} `) ? text.slice(name.length + 1) : text;
  return capital(rest);
}

function Chance({ chance }: { chance: number }) {
  const clamped = Math.min(1, Math.max(0, chance));
  return (
    <span class="chance">
      <span class="number">{chanceText(clamped)}</span>
      <Picture svg={chanceBar(clamped, { width: BAR, theme: variablesTheme })} silent />
    </span>
  );
}
