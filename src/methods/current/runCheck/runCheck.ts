import { type RunAnswer, runAnswer } from './answer.ts';
import { type RunCurve, runCurves } from './chart.ts';
import { runProblems } from './problems.ts';
import type { RunCable, RunQuestion } from './question.ts';

/** A run looked at with every cable. */
export interface RunCheck {
  /** Why it cannot be answered; the rest is empty then. */
  problems: string[];
  /** In the order of the cables handed in, nominal sizes after them. */
  answers: RunAnswer[];
  /** The thinnest nominal size that meets, by one run; null when none does. */
  leastSize: string | null;
  /** Measured cables that meet by one run, the thinnest first. */
  meets: string[];
  curves: RunCurve[];
}

/**
 * Looks at a run with every cable, measured ones and nominal sizes: volts at the load, heat, fuse, mass and cost, and the least
 * size that does. An estimate for still air and clean joints, and no judgement of terminals.
 *
 * @param charted false leaves the curves out.
 */
export function runCheck(
  q: RunQuestion,
  cables: readonly RunCable[],
  nominal: readonly RunCable[],
  { charted = true }: { charted?: boolean } = {},
): RunCheck {
  const problems = runProblems(q);
  if (problems.length > 0) return { problems, answers: [], leastSize: null, meets: [], curves: [] };
  const all = [...cables, ...nominal];
  const installed = (q.measured && all.find((c) => c.id === q.measured?.cable)) || null;
  const answers = all.map((cable) => runAnswer(q, cable, installed));
  const byArea = [...answers].sort((a, b) => a.cable.area - b.cable.area);
  const meeting = byArea.filter((a) => a.outcomes.all === 'meets');
  return {
    problems,
    answers,
    leastSize: meeting.find((a) => !a.cable.measured)?.cable.name ?? null,
    meets: meeting.filter((a) => a.cable.measured).map((a) => a.cable.id),
    curves: charted ? runCurves(q, all, installed) : [],
  };
}
