import type { Findings } from '../../../../findings/schema.ts';
import { Warnings } from '../inside/warnings.tsx';

/** Codes of what is worth knowing about bending alone. */
const ABOUT_BENDING = /^(?:flex|droop|push|judge[ds]?|judgements?|stiffness|side|weight)-/;

/** What somebody should know before quoting how a cable bends. */
export function BendWarnings({ findings }: { findings: Findings }) {
  const warnings = findings.warnings.filter((w) => ABOUT_BENDING.test(w.code));
  return <Warnings findings={{ ...findings, warnings }} />;
}
