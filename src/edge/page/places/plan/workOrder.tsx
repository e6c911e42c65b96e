import type { PlannedStep, TrialPlan } from '../../../../findings/plan.ts';
import { minutesWords } from '../../../../report/words/minutesWords.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { capital } from '../../../../units/capital.ts';
import { BEFORE } from '../bench/beforeWords.ts';
import { PlanSection } from './planSection.tsx';

/** The work in its order with its minutes, the caution at each step, and the drawn order of the pieces. */
export function WorkOrder({ trial, plan }: { trial: Trial; plan: TrialPlan | null }) {
  if (plan === null || plan.steps.length === 0) return null;
  const codes = new Map(plan.cables.flatMap((cable) => cable.pieces.map((piece) => [piece.specimen, piece.code])));
  const called = (specimen: string) => (trial.blinding.blind ? (codes.get(specimen) ?? '') : specimen);
  return (
    <PlanSection id="work-order" class="work-order" title="Order of work" state={minutesWords(plan.minutes)}>
      {plan.conditioning.text !== '' && <p>{plan.conditioning.text}</p>}
      <ol>
        {plan.steps.map((step) => (
          <Step key={step.step} step={step} called={called} />
        ))}
      </ol>
      <p class="total">
        <span>All steps, one person</span>
        <b>{minutesWords(plan.minutes)}</b>
      </p>
      <p class="note">
        Minutes are estimates from common practice. Within a step the pieces come in an order drawn anew for each round,
        so that a warming room or a tiring hand falls on all cables alike.
      </p>
    </PlanSection>
  );
}

function Step({ step, called }: { step: PlannedStep; called: (specimen: string) => string }) {
  const caution = BEFORE[step.step].caution;
  const pieces = step.blocks[0]?.length ?? 0;
  const rounds = step.blocks.length;
  return (
    <li>
      <div class="step">
        <b>{step.words}</b>
        <span class="note">
          {pieces === 1 ? 'one piece' : `${pieces} pieces`}
          {rounds > 1 && `, ${rounds} rounds`}
        </span>
        <span class="minutes">{minutesWords(step.minutes)}</span>
      </div>
      {step.parts.length > 0 && (
        <ul class="step-parts">
          {step.parts.map(({ act, words, minutes }) => (
            <li key={act}>
              <span>{capital(words)}</span>
              <span class="minutes">{minutesWords(minutes)}</span>
            </li>
          ))}
        </ul>
      )}
      {caution !== '' && <p class="caution note">{caution}</p>}
      <details>
        <summary>Order of the pieces</summary>
        <ol class="rounds">
          {step.blocks.map((block, round) => (
            <li key={round}>{block.map(called).join(' · ')}</li>
          ))}
        </ol>
      </details>
    </li>
  );
}
