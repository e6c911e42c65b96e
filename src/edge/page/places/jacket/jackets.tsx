import type { Findings } from '../../../../findings/schema.ts';
import type { Jacket } from '../../../../findings/shapes/jacket.ts';
import { jacketHeading } from '../../../../report/jacket/jacketHeading.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { jacketRoute } from '../../store/jacket/openInJacket.ts';
import { addressOf } from '../../store/routeOf.ts';
import { Warnings } from '../inside/warnings.tsx';
import { Changes } from './changes.tsx';
import { CutFaces } from './cutFaces.tsx';
import { HowWeKnowJackets } from './howWeKnowJackets.tsx';
import { JacketCables } from './jacketCables.tsx';
import { OutcomesOnRecord } from './outcomesOnRecord.tsx';
import { TestSection } from './testSection.tsx';

interface JacketsProps {
  trial: string;
  findings: Findings;
  jacket: Jacket;
  /** The cable whose sheet is open. */
  open: string | null;
}

/** Codes of what is worth knowing about jackets alone. */
const ABOUT_JACKETS = /^(?:wall|section|endurance|exposure)-/;

/** What was found about jackets: what they are first, then test by test what they last. */
export function Jackets({ trial, findings, jacket, open }: JacketsProps) {
  const warnings = findings.warnings.filter((w) => ABOUT_JACKETS.test(w.code));
  return (
    <>
      <header class="place-lead">
        <h1>{noBreak(jacketHeading(jacket))}</h1>
        <a class="button" href={addressOf(jacketRoute(trial, { what: 'run' }))}>
          Run a test
        </a>
      </header>
      <CutFaces findings={findings} jacket={jacket} />
      <JacketCables trial={trial} findings={findings} jacket={jacket} open={open} />
      {jacket.endurance.map((test) => (
        <TestSection
          key={`${test.test} ${test.stress} ${test.stress_unit} ${test.exposure}`}
          test={test}
          jacket={jacket}
        />
      ))}
      <Changes changes={jacket.exposures} />
      <Warnings findings={{ ...findings, warnings }} />
      <OutcomesOnRecord trial={trial} />
      <HowWeKnowJackets findings={findings} jacket={jacket} />
    </>
  );
}
