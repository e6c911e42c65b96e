import type { BenchAct, BenchList } from '../../../../findings/nextAct.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { handheld } from '../../store/media.ts';
import { Acts } from './acts.tsx';
import { Before } from './before.tsx';
import { BendActs } from './bendActs.tsx';
import { Carried } from './carried.tsx';
import { CarriedFold } from './carriedFold.tsx';
import { DoneLine } from './doneLine.tsx';
import { Fellows } from './fellows.tsx';
import { FourWireActs } from './fourWireActs.tsx';
import { InHand } from './inHand.tsx';
import { BenchKeypad } from './keypad.tsx';
import { NextAct } from './nextAct.tsx';
import { Progress } from './progress.tsx';
import { ProofShots } from './proofShots.tsx';
import { Questions } from './questions.tsx';
import { Repeats } from './repeats.tsx';
import { ThisBench } from './thisBench.tsx';
import { ToAbuse } from './toAbuse.tsx';
import { ValueField } from './valueField.tsx';
import { WallRound } from './wallRound.tsx';
import { WhoRecords } from './whoRecords.tsx';
import { WorkList } from './workList.tsx';

/** The bench with a reading in hand: what is left on one side, what was read on the other, the field between them. */
export function Place({ trial, act, work }: { trial: Trial; act: BenchAct; work: BenchList }) {
  return (
    <>
      <Progress work={work} />
      <div class="bench">
        <section class="now" aria-label="The reading in hand">
          {!handheld.value && <WhoRecords />}
          <InHand trial={trial} act={act} />
          {handheld.value && <CarriedFold act={act} />}
          <ValueField act={act} />
          <Questions trial={trial} />
          {handheld.value && <WhoRecords />}
          {!handheld.value && <Acts />}
          <Repeats trial={trial} act={act} />
          {!handheld.value && <DoneLine />}
          <NextAct trial={trial} />
          {!handheld.value && <Carried act={act} />}
          <WallRound act={act} />
          <FourWireActs act={act} />
          <BendActs act={act} />
          <Before act={act} />
          {handheld.value && <BenchKeypad />}
        </section>
        <WorkList trial={trial} act={act} work={work} />
        <Fellows trial={trial} act={act} work={work} />
      </div>
      <div class="bench-more">
        <ProofShots trial={trial} />
        <ThisBench trial={trial} />
        <ToAbuse trial={trial} />
      </div>
    </>
  );
}
