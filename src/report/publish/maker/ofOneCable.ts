import type { Findings } from '../../../findings/schema.ts';
import type { Trial } from '../../../trial/trial.ts';

/** What a trial holds and says of one cable. */
export interface OfOneCable {
  trial: Trial;
  findings: Findings;
}

/**
 * A trial and its findings with everything of other cables left out, so that a draft for one maker shows nobody else's. The
 * control piece stays: it is the tester's own wire.
 */
export function ofOneCable(trial: Trial, findings: Findings, cable: string): OfOneCable {
  const own = (name: string) => name === cable;
  const pieces = new Set(trial.specimens.filter((piece) => own(piece.cable)).map(({ specimen }) => specimen));
  const on = <T extends { specimen: string }>(rows: readonly T[]): T[] =>
    rows.filter(({ specimen }) => pieces.has(specimen));
  const readings = trial.readings.filter((reading) => own(reading.cable));
  const read = new Set(readings.map(({ reading }) => reading));
  return {
    trial: {
      ...trial,
      cables: trial.cables.filter((one) => own(one.cable)),
      specimens: trial.specimens.filter((piece) => pieces.has(piece.specimen)),
      evidence: trial.evidence.filter((look) => own(look.cable)),
      readings,
      strikes: trial.strikes.filter(({ row }) => read.has(row.reading ?? '')),
      retags: [],
      judgements: [],
      endurance: on(trial.endurance),
      currents: on(trial.currents),
      notes: [],
      settings: {},
      settingRows: [],
      parts: [],
      sealRows: [],
      replies: trial.replies.filter((reply) => own(reply.cable)),
      withdrawals: [],
      aside: [],
      remarks: trial.remarks.filter((remark) => remark.cable === cable),
    },
    findings: {
      ...findings,
      sentence: findings.cables.find((one) => own(one.cable))?.sentence ?? '',
      cables: findings.cables.filter((one) => own(one.cable)),
      comparisons: [],
      flex: null,
      jacket: null,
      current: null,
      decide: null,
      warnings: findings.warnings.filter((warning) => warning.cable === cable),
    },
  };
}
