import '../../../styles/onRecord.css';
import { rowName } from '../../../../../trial/rowName.ts';
import type { Evidence, Trial } from '../../../../../trial/trial.ts';
import { PutAside } from '../../../parts/putAside.tsx';

/** Why looks are usually put aside. */
const USUAL = ['another cable', 'not scraped deep enough', 'pressed by mistake'];

/** What was seen of a cable so far, each with the way to put it aside. */
export function LooksOnRecord({ trial, cable, sign }: { trial: Trial; cable: string; sign: string }) {
  const looks = trial.evidence.filter((look) => look.cable === cable && look.seen !== '');
  if (looks.length === 0) return null;
  return (
    <section class="on-record" aria-label={`Seen of ${sign} so far`}>
      <h3>On record of {sign}</h3>
      <ul>
        {looks.map((look) => (
          <li key={look.entry}>
            <span>
              <bdi dir="auto">{wordsFor(look)}</bdi>
            </span>
            <PutAside
              about="evidence"
              which={rowName('evidence', look.row)}
              name={`${sign}, ${wordsFor(look)}`}
              usual={USUAL}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** `scraped strand, outer, middle: red through, 2 of 3`. */
function wordsFor({ look, where, seen, row }: Evidence): string {
  const place = [look.replaceAll('_', ' '), where].filter((part) => part !== '').join(', ');
  return `${place}: ${[seen, row.count ?? ''].filter((part) => part !== '').join(', ')}`;
}
