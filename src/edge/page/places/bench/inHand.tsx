import type { BenchAct } from '../../../../findings/nextAct.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { capital } from '../../../../units/capital.ts';
import { pieceDetail, quantityHead, signOf, unitWords } from '../../store/bench/names.ts';

/** Signs longer than this are set smaller, so that they stand beside the quantity. */
const SHORT = 3;

/** Which piece, which quantity, which tool. */
export function InHand({ trial, act }: { trial: Trial; act: BenchAct }) {
  const { specimen, quantity, instrument } = act.item;
  const sign = signOf(trial, specimen);
  return (
    <div class="in-hand">
      <h1>
        <bdi class={sign.length > SHORT ? 'sign long' : 'sign'} dir="auto">
          {sign}
        </bdi>{' '}
        <span class="what">{quantityHead(quantity)}</span>
      </h1>
      <p class="with">
        <span>{toolWords(trial, instrument)}</span>
        <span>
          <bdi dir="auto">{pieceDetail(trial, specimen)}</bdi>
        </span>
      </p>
    </div>
  );
}

/** `Pocket scale, 0.01 g, limit 0.03 g`: the tool as described. */
function toolWords(trial: Trial, instrument: string | null): string {
  const tool = trial.instruments.find((each) => each.instrument === instrument);
  if (tool === undefined) return 'By eye, or with a tool that is not listed';
  const { resolution = '', unit = '', max_error = '' } = tool.row;
  const kind = tool.kind || tool.instrument;
  const step = resolution === '' ? '' : `${resolution} ${unitWords(unit)}`;
  const limit = max_error === '' ? '' : `limit ${max_error} ${/[a-z%]/i.test(max_error) ? '' : unitWords(unit)}`.trim();
  return [capital(kind), step, limit].filter((words) => words !== '').join(', ');
}
