import type { Assay } from '../store/assay.ts';
import { NothingToSay } from './nothingToSay.tsx';
import { Working } from './working.tsx';

/** What stands until there are findings: how far the computing is, or what stood in the way. */
export function Waiting({ trial, now }: { trial: string; now: Assay | null }) {
  if (now?.stage === 'failed') return <NothingToSay trial={trial} sentence={now.sentence} />;
  return (
    <>
      <h1>Reading the trial.</h1>
      {now !== null && <Working now={now} />}
    </>
  );
}
