import {
  type ProfileAnswer,
  ProfileRefused,
  profileAnswer,
  profileFromText,
} from '../../../../../methods/current/runCheck/profile.ts';
import { timeText } from '../../../../../report/runOverload.ts';
import { noBreak } from '../../../../../report/words/noBreak.ts';
import { capital } from '../../../../../units/capital.ts';
import { ZERO_CELSIUS } from '../../../../../units/dimension.ts';
import { Name } from '../../../parts/name.tsx';
import { answers, candidates, looked } from '../../../store/amps/running.ts';
import { useAfterRest } from './useAfterRest.ts';

interface Through {
  rows: { id: string; name: string; answer: ProfileAnswer }[];
  trouble: string;
}

/** What a load that changes does to every measured cable; worked out when nothing has moved for a moment. */
export function ProfileAnswers() {
  const typed = answers.value.profile;
  const { question } = looked.value;
  const cables = candidates.value;
  const found = useAfterRest(() => (typed.trim() === '' ? null : through(typed)), [typed, question, cables]);
  if (found === null || typed.trim() === '') return null;
  return (
    <section class="run-fuses" aria-labelledby="run-profile">
      <h2 id="run-profile">Under the load as pasted</h2>
      {found.trouble !== '' && <p role="alert">{found.trouble}</p>}
      <ul>
        {found.rows.map(({ id, name, answer: { peak, peakAt, margin, lost, energy } }) => (
          <li key={id}>
            <Name>{name || id}</Name>{' '}
            {noBreak(
              `comes to ${(peak - ZERO_CELSIUS).toFixed(0)} °C after ${timeText(peakAt)}, ${margin >= 0 ? `${margin.toFixed(0)} K below` : `${(-margin).toFixed(0)} K above`} its rating; at most ${lost.toFixed(2)} V and in all ${(energy / 3600).toFixed(1)} Wh are lost.`,
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function through(text: string): Through {
  try {
    const holds = profileFromText(text);
    const { question } = looked.peek();
    const rows = candidates
      .peek()
      .map((cable) => ({ id: cable.id, name: cable.name, answer: profileAnswer(question, cable, holds) }));
    return { rows, trouble: '' };
  } catch (error) {
    if (!(error instanceof ProfileRefused || error instanceof RangeError)) throw error;
    return {
      rows: [],
      trouble: `${capital(error.message).replace(/\.$/, '')}.`,
    };
  }
}
