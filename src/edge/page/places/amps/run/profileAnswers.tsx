import { useEffect, useState } from 'preact/hooks';
import {
  type ProfileAnswer,
  ProfileRefused,
  profileAnswer,
  profileFromText,
} from '../../../../../methods/current/runCheck/profile.ts';
import { noBreak } from '../../../../../report/words/noBreak.ts';
import { ZERO_CELSIUS } from '../../../../../units/dimension.ts';
import { Name } from '../../../parts/name.tsx';
import { answers, candidates, looked } from '../../../store/amps/running.ts';

/** ms without a change after which the march through time is worth its while. */
const REST = 300;

interface Through {
  rows: { id: string; name: string; answer: ProfileAnswer }[];
  trouble: string;
}

/** What a load that changes does to every measured cable; worked out when nothing has moved for a moment. */
export function ProfileAnswers() {
  const [found, setFound] = useState<Through | null>(null);
  const typed = answers.value.profile;
  const { question } = looked.value;
  const cables = candidates.value;
  useEffect(() => {
    if (typed.trim() === '') return setFound(null);
    const wait = setTimeout(() => setFound(through(typed)), REST);
    return () => clearTimeout(wait);
  }, [typed, question, cables]);
  if (found === null) return null;
  return (
    <section class="run-fuses" aria-labelledby="run-profile">
      <h2 id="run-profile">Under the load as pasted</h2>
      {found.trouble !== '' && <p role="alert">{found.trouble}</p>}
      <ul>
        {found.rows.map(({ id, name, answer: { peak, peakAt, margin, lost, energy } }) => (
          <li key={id}>
            <Name>{name || id}</Name>{' '}
            {noBreak(
              `comes to ${(peak - ZERO_CELSIUS).toFixed(0)} °C after ${minutes(peakAt)}, ${margin >= 0 ? `${margin.toFixed(0)} K below` : `${(-margin).toFixed(0)} K above`} its rating; at most ${lost.toFixed(2)} V and in all ${(energy / 3600).toFixed(1)} Wh are lost.`,
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

const minutes = (seconds: number) => (seconds < 90 ? `${seconds.toFixed(0)} s` : `${(seconds / 60).toFixed(0)} min`);

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
      trouble: `${error.message.charAt(0).toUpperCase()}${error.message.slice(1).replace(/\.$/, '')}.`,
    };
  }
}
