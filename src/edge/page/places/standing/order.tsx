import { useMemo } from 'preact/hooks';
import type { Findings } from '../../../../findings/schema.ts';
import type { Decide } from '../../../../findings/shapes/decide.ts';
import type { OrderNow } from '../../../../findings/standing/orderBy.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import type { Standing } from '../../store/standing/standing.ts';
import { Door } from './door.tsx';
import { HowWeKnowStanding } from './howWeKnowStanding.tsx';
import { NotMeasured } from './notMeasured.tsx';
import { OtherTastes } from './otherTastes.tsx';
import { PlaceTable } from './placeTable.tsx';
import { Resting } from './resting.tsx';
import { ValueForMoney } from './valueForMoney.tsx';
import { Weights } from './weights.tsx';

/** A standing of which there is something to show. */
export type Stood = Standing & { order: OrderNow; decide: Decide };

interface OrderProps {
  trial: string;
  stood: Stood;
  findings: Findings | null;
  /** The cable whose sheet is open. */
  open: string | null;
}

/** The order by the weights at hand, and everything that is to be known beside it. */
export function Order({ trial, stood, findings, open }: OrderProps) {
  const { order, decide } = stood;
  // What follows a slider must not wait for what does not: these are laid out anew only when they have something new to say.
  const beside = useMemo(
    () => (
      <>
        <OtherTastes decide={decide} />
        <ValueForMoney decide={decide} findings={findings} />
      </>
    ),
    [decide, findings],
  );
  const known = useMemo(() => <HowWeKnowStanding decide={decide} />, [decide]);
  return (
    <>
      <Sentence text={order.sentence} />
      <div class="standing-desk">
        <Weights stood={stood} />
        <section class="standing-order">
          <h2 class="hidden">The chance of each place</h2>
          <PlaceTable trial={trial} stood={stood} findings={findings} open={open} />
          <Outside decide={decide} />
          <Resting stood={stood} />
          <NotMeasured stood={stood} />
        </section>
      </div>
      {beside}
      <Door stood={stood} />
      {known}
    </>
  );
}

/** What the sentence adds about chances stands below it, so that the order itself is read in two lines. */
const ADDED = ' Chance of the first place:';

function Sentence({ text }: { text: string }) {
  const at = text.indexOf(ADDED);
  const [order, chances] = at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at + 1)];
  return (
    <header class="standing-lead">
      <h1>{noBreak(order)}</h1>
      {chances !== '' && <p class="said">{noBreak(chances)}</p>}
    </header>
  );
}

/** References are measured with the others and compared with nobody. */
function Outside({ decide }: { decide: Decide }) {
  if (decide.outside.length === 0) return null;
  return (
    <p class="standing-outside">
      <b>Outside the order:</b>{' '}
      {decide.outside.map(({ cable, name }, at) => (
        <>
          {at > 0 && ', '}
          <bdi dir="auto" key={cable}>
            {name || cable}
          </bdi>
        </>
      ))}
      . Measured as a reference, and compared with nobody.
    </p>
  );
}
