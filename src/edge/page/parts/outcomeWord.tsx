import { failsOnMetal, outcomeWords, saidClaim, withoutClaim } from '../../../findings/cableOutcome.ts';
import type { CableFindings, Claim } from '../../../findings/schema.ts';
import { markOfClaim, outcomeMark } from '../../../report/outcomeMark.ts';
import { variablesTheme } from '../../../report/theme.ts';
import { Picture } from './picture.tsx';

/** Size of the mark beside a word in a table, px. */
const MARK = 14;

interface OutcomeProps {
  claim: Claim;
  copperShare?: number | null;
  /** A word after the outcome, such as 'metal'. */
  about?: string;
}

/** An outcome: the word, with its small cut face before it. */
export function OutcomeWord({ claim, copperShare = null, about = '' }: OutcomeProps) {
  const mark = markOfClaim(claim, copperShare);
  if (claim.outcome === null || mark === null) return <span class="outcome open">{outcomeWords(claim)}</span>;
  return (
    <span class={claim.outcome === 'not settled' ? 'outcome open' : 'outcome'}>
      <Picture silent svg={outcomeMark(mark, { size: MARK, theme: variablesTheme })} />
      <span>
        {claim.outcome}
        {about !== '' && <span class="about"> {about}</span>}
      </span>
    </span>
  );
}

/** What came of a cable's label, in the few words that stand under its drawing. */
export function HeadlineOutcome({ cable }: { cable: CableFindings }) {
  const metal = failsOnMetal(cable);
  const claim = saidClaim(cable);
  if (claim === null) return <span class="outcome open">{withoutClaim(cable)}</span>;
  return <OutcomeWord claim={claim} copperShare={cable.copper_share?.value ?? null} about={metal ? 'metal' : ''} />;
}
