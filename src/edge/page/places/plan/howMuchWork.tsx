import { useState } from 'preact/hooks';
import { planSettings } from '../../../../findings/plan/settings.ts';
import type { TrialPlan } from '../../../../findings/plan.ts';
import { minutesWords } from '../../../../report/words/minutesWords.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { Switch } from '../../parts/switch.tsx';
import { everything, leastWork, type Ways, wishesIn, workSo, worksSo } from '../../store/plan/methods.ts';
import type { Outlook } from '../../store/plan/planned.ts';

interface HowMuchWorkProps {
  trial: Trial;
  ahead: Outlook;
  plan: TrialPlan;
}

/** The least work that settles the labels, against everything that can be done. */
export function HowMuchWork({ trial, ahead, plan }: HowMuchWorkProps) {
  const [going, setGoing] = useState<'least' | 'everything' | null>(null);
  const wishes = wishesIn(trial.settings.methods ?? '');
  const all = everything(wishes);
  const least = leastWork(
    ahead.powers.map(({ smallest }) => smallest),
    wishes,
  );
  const settings = planSettings(trial.settings);
  const isLeast = least !== null && worksSo(trial.settings, settings, least);
  const isAll = worksSo(trial.settings, settings, all);
  const now = going ?? (isLeast ? 'least' : isAll ? 'everything' : 'ticked');
  const choices: (readonly ['least' | 'everything' | 'ticked', string, string])[] = [
    ...(least === null ? [] : [['least', 'Least work that settles it', 'Least work that settles it'] as const]),
    ['everything', 'Everything', 'Everything'],
    ...(now === 'ticked' ? [['ticked', 'As ticked below', 'As ticked below'] as const] : []),
  ];
  const go = async (way: 'least' | 'everything', ways: Ways) => {
    setGoing(way);
    await workSo(ways).finally(() => setGoing(null));
  };
  const choose = (way: string) => {
    if (way === 'least' && least !== null) void go('least', least);
    if (way === 'everything') void go('everything', all);
  };
  return (
    <div class="how-much">
      <Switch legend="How much work" choices={choices} value={now} onChoose={choose} />
      <p>
        <b>{minutesWords(plan.minutes)}</b> at the bench{soaking(plan)}
      </p>
    </div>
  );
}

function soaking({ conditioning: { hours } }: TrialPlan): string {
  if (hours === 0) return '.';
  return `, after ${hours === 1 ? 'an hour' : `${hours} hours`} of lying in the room.`;
}
