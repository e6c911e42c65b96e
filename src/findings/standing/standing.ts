import type { Warning } from '../schema.ts';
import type { Decide } from '../shapes/decide.ts';
import { decideBy } from './decide.ts';
import { type PreparedStanding, prepareStanding, type StandingGround } from './prepare.ts';
import { type Weighting, weightingOf, wishOf } from './weighting.ts';

export interface StandingFound {
  /** null where the plan says nothing of a standing, or there are not two cables to be ordered. */
  decide: Decide | null;
  warnings: Warning[];
}

/** Who stands where, by the weights that the plan states. */
export function standingOf(ground: StandingGround): StandingFound {
  const prepared = prepareStanding(ground);
  if (prepared === null) return { decide: null, warnings: [] };
  const weighting = weightingOf(
    wishOf(prepared.settings),
    prepared.criteria.map((c) => c.id),
  );
  return {
    decide: decideBy(prepared, weighting),
    warnings: [...prepared.warnings, ...standingWarnings(prepared, weighting)],
  };
}

/** What is to be known beside an order, for the weights at hand. */
export function standingWarnings(prepared: PreparedStanding, weighting: Weighting): Warning[] {
  const { criteria, cables, known, alike } = prepared;
  const { weights, leftOut } = weighting;
  const list: Warning[] = [];
  const say = (code: string, cable: string | null, text: string) => list.push({ code, cable, text });
  const lower = (k: number) => criteria[k].name.toLowerCase().split(',')[0];
  if (leftOut.length > 0)
    say(
      'standing-left-out',
      null,
      `Wished for in the order but not measured on any cable: ${leftOut.join(', ')}. The other weights share what they would have counted.`,
    );
  cables.forEach(({ cable, name }, i) => {
    const unknown = criteria.flatMap((c, k) => (weights[k] > 0 && !known[i][k] ? [{ c, k }] : []));
    for (const { c, k } of unknown)
      say(
        'standing-unknown',
        cable,
        `${name}: ${lower(k)} is not known. Anything from ${c.scale.worst} to ${c.scale.best} ${c.unit === '1' ? '' : `${c.unit} `}was allowed for, so its place is told less surely.`,
      );
  });
  for (const { a, b, correlation } of alike)
    if (weights[a] > 0 && weights[b] > 0)
      say(
        'standing-alike',
        null,
        `${criteria[a].name} and ${lower(b)} rise and fall together here (correlation ${correlation.toFixed(2)}): weighing both counts one thing twice.`,
      );
  const suggested = criteria.filter((c, k) => weights[k] > 0 && c.suggested);
  if (suggested.length > 0)
    say(
      'standing-scales-suggested',
      null,
      `The scales of ${suggested.map((c) => c.id).join(', ')} are suggestions from the claimed sizes or the field. State them (standing_scale_${suggested[0].id} in plan.csv) before the order is shown to anybody, so that no cable can move another's worth.`,
    );
  return list;
}
