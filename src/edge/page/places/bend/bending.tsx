import type { Findings } from '../../../../findings/schema.ts';
import type { Flex } from '../../../../findings/shapes/flex.ts';
import { type BendMethod, bendMethods } from '../../../../report/bend/bendMethods.ts';
import { bendSentences, howJudged } from '../../../../report/bend/bendSentences.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { capital } from '../../../../units/capital.ts';
import type { Assay } from '../../store/assay.ts';
import { bendRoute } from '../../store/bend/openInBend.ts';
import { addressOf } from '../../store/routeOf.ts';
import { BendCables } from './bendCables.tsx';
import { BendWarnings } from './bendWarnings.tsx';
import { HowWeKnowBending } from './howWeKnowBending.tsx';
import { JudgementsOnRecord } from './judgementsOnRecord.tsx';
import { MethodStrips } from './methodStrips.tsx';
import { PhotosWithoutSheet } from './photosOfPiece.tsx';

interface BendingProps {
  now: Assay;
  findings: Findings;
  flex: Flex;
  /** The cable whose sheet is open. */
  open: string | null;
}

/** What was found about bending. */
export function Bending({ now, findings, flex, open }: BendingProps) {
  const methods = bendMethods(flex);
  return (
    <>
      <Lead trial={now.trial} flex={flex} />
      {methods.length > 0 && <MethodStrips methods={methods} />}
      {methods.length > 0 && (
        <p class="bend-legend note">
          <Legend methods={methods} />
        </p>
      )}
      <BendCables now={now} findings={findings} flex={flex} methods={methods} open={open} />
      <PhotosWithoutSheet trial={now.trial} sheets={sheetsOf(flex)} />
      <BendWarnings findings={findings} />
      <JudgementsOnRecord trial={now.trial} />
      <HowWeKnowBending flex={flex} findings={findings} />
    </>
  );
}

/** Cables with a sheet of their own. */
const sheetsOf = ({ cables, judged }: Flex) => [...cables, ...(judged?.cables ?? [])].map(({ cable }) => cable);

/** The order first, then what hands made of it and whether the two agree, and the way to judge more. */
function Lead({ trial, flex }: { trial: string; flex: Flex }) {
  const { measured, judged, agreement } = bendSentences(flex);
  const [first, second] = measured === '' ? [judged, ''] : [measured, judged];
  return (
    <header class="place-lead">
      <h1>{noBreak(first || noOrder(flex))}</h1>
      {(second !== '' || flex.judged !== null) && (
        <p class="said">
          {noBreak([second, agreement].filter(Boolean).join(' '))}
          {flex.judged !== null && <span class="unknown"> {noBreak(capital(howJudged(flex.judged)))}.</span>}
        </p>
      )}
      <a class="button" href={addressOf(bendRoute(trial, { what: 'judge' }))}>
        Judge pairs
      </a>
    </header>
  );
}

/** What is said where nothing orders the cables and none of them lacks anything for it. */
const noOrder = ({ cables }: Flex) =>
  cables.length === 1
    ? 'One cable was bent: a second one gives an order.'
    : 'No order by stiffness yet: it takes two cables that drooped, or two that were pushed.';

function Legend({ methods }: { methods: readonly BendMethod[] }) {
  const joined = methods.some((m) => m.id === 'droop') && methods.some((m) => m.id === 'judged');
  return (
    <>
      Bars hold the true value 95 times in 100. Cables behind one bracket cannot be parted; a line stands where a band
      ends.
      {joined && ' Lines between the two orders cross only where hand and droop put two cables the other way round.'}
    </>
  );
}
