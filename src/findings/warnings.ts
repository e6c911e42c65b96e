import { isKnownSight, knownSights } from '../methods/metal/eye.ts';
import { pieceSign, quantityWords } from '../trial/plainWords.ts';
import type { Trial } from '../trial/trial.ts';
import { strandWarnings } from './cable/strands.ts';
import { controlGap } from './controlGap.ts';
import { BENT } from './flex/bendReadings.ts';
import { timesText } from './flex/words.ts';
import { doubtfulLengths } from './rows/doubtfulLengths.ts';
import type { CableReadings, TrialRows } from './rows/rowsOfTrial.ts';
import type { CableFindings, Control, Warning } from './schema.ts';

function aboutSpecimens(c: CableReadings): Warning[] {
  const d = c.disagreement;
  if (!d) return [];
  const sign = (specimen: string) => pieceSign(c, specimen);
  const which = d.odd ? `${sign(d.odd)} stands apart` : 'two pieces cannot tell which is wrong';
  return [
    {
      code: 'specimens-disagree',
      cable: c.cable.cable,
      text: `The pieces ${d.specimens.map(sign).join(', ')} differ by ${(100 * d.spread).toFixed(1)} % in mass per length, more than scale and rule explain: ${which}. The interval was widened; weigh and measure them again.`,
    },
  ];
}

/** Repeats far out of those of the other pieces by the same tool: they widen this cable's figures alone. */
function aboutScatter(c: CableReadings): Warning[] {
  return c.groups.all
    .filter((g) => g.apart !== null && !BENT.has(g.quantity))
    .map((g) => ({
      code: 'repeats-scatter-apart',
      cable: c.cable.cable,
      text: `Repeats of the ${quantityWords(g.quantity)} of ${pieceSign(c, g.specimen)} scatter ${timesText(g.apart!)} as much as those of the other pieces: that widens the figures of this cable alone. Read it again.`,
    }));
}

function aboutCable(c: CableReadings, f: CableFindings): Warning[] {
  const at = c.cable.cable;
  const list: Warning[] = [
    ...c.unusable.map((u) => ({ code: u.code, cable: at, text: u.text })),
    ...aboutSpecimens(c),
    ...doubtfulLengths(c).map(({ sign, words }) => ({
      code: 'length-not-of-the-piece',
      cable: at,
      text: `The ${words} (${sign}): check that length and its unit first. What was weighed or ohmed by it hangs on it.`,
    })),
    ...strandWarnings(c),
    ...aboutScatter(c),
  ];
  if (f.consistency?.recheck) list.push({ code: 'recheck', cable: at, text: f.consistency.sentence });
  for (const m of f.masses) if (!m.closes) list.push({ code: 'masses-do-not-close', cable: at, text: m.text });
  if (f.label.vague && f.label.claimed_area_mm2 === null)
    list.push({
      code: 'label-not-read',
      cable: at,
      text: `No size can be read from the label "${f.label.size}", so nothing of this piece is judged by it. Type the size as it is printed, on Plan.`,
    });
  else if (f.label.vague)
    list.push({
      code: 'vague-label',
      cable: at,
      text: `The label "${f.label.size}" names no standard. It is read as AWG and as automotive size of the same number; each outcome says which reading it is for.`,
    });
  if (f.metal_found && f.metal['copper-clad steel'] > 0.2)
    list.push({
      code: 'magnet',
      cable: at,
      text: 'Hold a magnet to the strands: steel under copper is not ruled out.',
    });
  return list;
}

function aboutTools(trial: Trial, rows: TrialRows): Warning[] {
  return rows.tools.outsideSpan.map((id) => {
    const kind = trial.instruments.find((i) => i.instrument === id)?.kind || id;
    return {
      code: 'tool-outside-its-span',
      cable: null,
      text: `The ${kind} (${id}) was used outside the temperatures in which its limit of error holds: twice the limit was taken.`,
    };
  });
}

function aboutSights(trial: Trial): Warning[] {
  return trial.evidence
    .filter((e) => (e.look === 'scraped_strand' || e.look === 'magnet') && e.seen && !isKnownSight(e.look, e.seen))
    .map((e) => ({
      code: 'sight-not-understood',
      cable: e.cable,
      text: `What was seen, "${e.seen}", is kept on record but not understood. Known words: ${knownSights()
        .filter((s) => s.look === e.look)
        .map((s) => s.seen)
        .join('; ')}.`,
    }));
}

/** Everything worth a warning: from the fold, the tools, the readings, and the findings themselves. */
export function warningsOf(
  trial: Trial,
  rows: TrialRows,
  cables: readonly CableFindings[],
  controls: readonly Control[],
): Warning[] {
  const list: Warning[] = trial.remarks.map((r) => ({ code: r.code, cable: r.cable, text: r.text }));
  const gap = controlGap(cables);
  if (trial.cables.length > 1 && gap !== null) list.push({ code: 'control-not-complete', cable: null, text: gap });
  else if (trial.cables.length > 1 && controls.length === 0)
    list.push({
      code: 'no-control-piece',
      cable: null,
      text: 'No control piece: a length of plain solid copper building wire, weighed and ohmed like a cable, would show that the tools say copper for copper.',
    });
  for (const c of controls) if (!c.agrees) list.push({ code: 'control-disagrees', cable: c.cable, text: c.sentence });
  list.push(...aboutTools(trial, rows), ...aboutSights(trial));
  rows.cables.forEach((c, i) => {
    list.push(...aboutCable(c, cables[i]));
  });
  return list;
}
