import type { Findings } from '../../../../findings/schema.ts';
import { BEND_QUANTITIES } from '../../../../journal/quantities.ts';
import { quantityHead } from '../../../../trial/plainWords.ts';
import { Warnings } from '../inside/warnings.tsx';

/** Codes of what is worth knowing about bending alone. */
const ABOUT_BENDING = /^(?:flex|droop|push|judge[ds]?|judgements?|stiffness|side|weight)-/;

/** Temperatures far from the others' are of bending where the quantity that they stand with is. */
const BENDING_HEADS = BEND_QUANTITIES.map((quantity) => `${quantityHead(quantity)} `);
const isOfBending = ({ code, text }: Findings['warnings'][number]) =>
  ABOUT_BENDING.test(code) || (code === 'temperature-apart' && BENDING_HEADS.some((head) => text.startsWith(head)));

/** What somebody should know before quoting how a cable bends. */
export function BendWarnings({ findings }: { findings: Findings }) {
  const warnings = findings.warnings.filter(isOfBending);
  return <Warnings findings={{ ...findings, warnings }} />;
}
