import { ownLimitOf } from '../../trial/checkDoubt.ts';
import { checksThatCount } from '../../trial/checksThatCount.ts';
import type { Instrument, Trial } from '../../trial/trial.ts';
import { typedText } from '../../units/typedText.ts';
import { type BenchTools, benchTools } from './benchTools.ts';
import type { PlanWarning } from './planWarnings.ts';

/** Jobs that a check can move to another tool, in words. */
const JOBS: readonly [keyof BenchTools, string][] = [
  ['scale', 'weighing'],
  ['meter', 'reading ohms'],
  ['caliper', 'reading diameters'],
  ['micrometer', 'reading strands'],
  ['rule', 'measuring lengths'],
  ['tape', 'measuring long lengths'],
  ['thermometer', 'reading temperatures'],
];

/** The tools of the bench as they would be taken without any check. */
export function toolsWithoutChecks({ instruments }: Pick<Trial, 'instruments'>): BenchTools {
  return benchTools({ instruments: instruments.map((tool) => ({ ...tool, limit: ownLimitOf(tool) })) });
}

/** What a check showed, as its row has it: `pocket scale, which read 3.7 oz on 100 g`. */
function whatWasSeen(trial: Trial, tools: readonly Instrument[]): string {
  const said = tools.map(({ instrument }) => {
    const own = trial.checks.filter((check) => check.instrument === instrument && !check.zero);
    const last = checksThatCount(own).at(-1);
    if (last === undefined) return instrument;
    const unit = last.row.unit ?? '';
    const [read, known] = [last.row.read_value ?? '', last.row.known_value ?? ''];
    return `${instrument}, which read ${typedText(read, unit)} on ${typedText(known, unit)}`;
  });
  return said.join('; ');
}

/** Lengths in whole millimetres that differ are said to differ. */
const millimetres = (metres: number): number => Math.round(metres * 1000);

/**
 * What the checks of the tools changed in the plan: jobs that went to another tool, and the length of the pieces to take
 * apart. Nothing changes a plan without a word.
 *
 * @param lengths length of the pieces to take apart of each cable, m, with the tools as checked and without checks
 */
export function planByChecks(
  trial: Trial,
  tools: BenchTools,
  lengths: readonly { name: string; checked: number | null; unchecked: number | null }[],
): PlanWarning[] {
  const checked = trial.instruments.filter((tool) => tool.ownLimit !== undefined && tool.limit.checked === true);
  if (checked.length === 0) return [];
  const before = toolsWithoutChecks(trial);
  const moved = JOBS.flatMap(([job, words]) => {
    const from = before[job]?.instrument;
    const to = tools[job]?.instrument;
    return from === to || from === undefined || to === undefined ? [] : [`${words} goes from ${from} to ${to}`];
  });
  const longer = lengths.filter(
    ({ checked: now, unchecked: was }) => now !== null && was !== null && millimetres(now) !== millimetres(was),
  );
  const first = longer[0];
  const pieces =
    first === undefined
      ? []
      : [
          `pieces to take apart are ${millimetres(first.checked!)} mm instead of ${millimetres(first.unchecked!)} mm${
            longer.length > 1 ? ` (${first.name}; likewise ${longer.length - 1} more)` : ` (${first.name})`
          }`,
        ];
  const changes = [...moved, ...pieces];
  if (changes.length === 0) return [];
  const seen = whatWasSeen(trial, checked);
  const text = `The plan is another by what the checks showed (${seen}): ${changes.join('; ')}. If a check was typed wrong, check again or take it back under Tools.`;
  return [{ code: 'plan-by-checks', cable: null, text }];
}
