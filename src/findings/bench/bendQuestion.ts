import { bundleDiameter } from '../../methods/decide/conductorSize.ts';
import { bestOverhang, LEAST_LAMBDA, roughLambda } from '../../methods/flex/droop.ts';
import { droopShape } from '../../methods/flex/elastica.ts';
import { mean } from '../../numerics/describe.ts';
import type { Cable, Trial } from '../../trial/trial.ts';
import { typedText } from '../../units/typedText.ts';
import { readLabel } from '../claims/label.ts';
import { isPossibleTip } from '../flex/settleNothing.ts';
import { droopSetFor } from './bendSets.ts';
import { cutLengthOf } from './pieceLength.ts';
import type { CandidateReading, Question } from './questionFor.ts';

const mm = (metres: number) => `${Math.round(metres * 1000)} mm`;
const roundedMm = (metres: number) => `${Math.round(metres * 200) * 5} mm`;
/** Less than so much of a bend that springs back was typed as a share, not in per cent. Ours. */
const LEAST_SPRING = 0.02;

const counted = (trial: Trial, specimen: string) =>
  trial.readings.filter((r) => r.standing === 'counted' && r.specimen === specimen);

/** The overhang of the droop in hand, m; null while none was read. */
function overhangNow(trial: Trial, specimen: string): number | null {
  const set = droopSetFor(trial, specimen, null);
  const read = counted(trial, specimen).filter((r) => r.quantity === 'overhang' && r.set === set);
  return read.length === 0 ? null : mean(read.map((r) => r.value));
}

function aboutTip(trial: Trial, c: CandidateReading, value: number): Question | null {
  const shown = typedText(c.value, c.unit);
  const overhang = overhangNow(trial, c.specimen);
  if (c.quantity === 'chord_angle' && !isPossibleTip(c.quantity, value, 0))
    return { code: 'too-much', text: `An angle of ${shown} is past plumb, where no tip hangs. Is it read from level?` };
  if (overhang === null) return null;
  if (c.quantity === 'tip_drop' && Math.abs(value) >= overhang)
    return {
      code: 'too-much',
      text: `A drop of ${shown} is no less than the ${mm(overhang)} that hang free. Are both right, and in which unit?`,
    };
  const read = c.quantity === 'tip_drop' ? 'drop' : 'chordAngle';
  const share = read === 'drop' ? value / overhang : value;
  if (value < 0 || share >= droopShape(LEAST_LAMBDA)[read]) return null;
  const lambda = roughLambda(read, share);
  const cut = cutLengthOf(trial, c.specimen);
  const best = lambda > 0 ? bestOverhang(overhang, lambda) : null;
  const longer =
    best !== null && (cut === null || best < cut)
      ? `Let about ${roundedMm(best)} hang free, or push it`
      : 'Let more hang free, or push it';
  return {
    code: 'too-little',
    text: `A drop of ${shown} over ${mm(overhang)} is too small to tell stiffness by, unless the piece is curled and the other way up drops more. ${longer}.`,
  };
}

/** Outer diameter of a cable, m: as measured, as labelled, else that of the bare bundle of its size. */
function thickness(trial: Trial, cable: Cable): { value: number; known: boolean } | null {
  const read = trial.readings.filter(
    (r) => r.standing === 'counted' && r.quantity === 'outer_diameter' && r.cable === cable.cable,
  );
  if (read.length > 0) return { value: mean(read.map((r) => r.value)), known: true };
  if (cable.label.outerDiameter !== null) return { value: cable.label.outerDiameter, known: false };
  const area = readLabel(cable.label).area;
  return area === null ? null : { value: bundleDiameter(area), known: false };
}

function aboutCoil(trial: Trial, c: CandidateReading, value: number): Question | null {
  const piece = trial.specimens.find((s) => s.specimen === c.specimen);
  const cable = trial.cables.find((each) => each.cable === piece?.cable);
  if (!piece || !cable) return null;
  const thick = thickness(trial, cable);
  const shown = typedText(c.value, c.unit);
  const cut = cutLengthOf(trial, c.specimen);
  const turned = c.quantity === 'coil_turns';
  const across = turned ? (cut === null ? null : cut / (Math.PI * value)) : value;
  if (thick !== null && across !== null && across < thick.value)
    return {
      code: turned ? 'too-much' : 'too-little',
      text: turned
        ? `${shown} turns in ${mm(cut!)} are tighter than a cable ${mm(thick.value)} thick can be wound. Are the turns right?`
        : `A coil of ${shown} is narrower than the cable is thick, about ${mm(thick.value)}. Are the unit and the decimal point right?`,
    };
  if (thick?.known === true) return null;
  return {
    code: 'no-diameter',
    text: 'How thick is the cable? Without its outer diameter a coil is not told as a multiple of it. Keep this, and measure that too.',
  };
}

/** A doubt about a reading of bending that its own fellows tell; null where there is none. */
export function bendQuestion(trial: Trial, c: CandidateReading, value: number): Question | null {
  if (c.quantity === 'tip_drop' || c.quantity === 'chord_angle') return aboutTip(trial, c, value);
  if (c.quantity === 'coil_diameter' || c.quantity === 'coil_turns') return aboutCoil(trial, c, value);
  if (c.quantity !== 'spring_back') return null;
  const shown = typedText(c.value, c.unit);
  if (value > 1)
    return { code: 'too-much', text: `${shown} is more than all of the bend. What returned, as a share of the bend?` };
  return value > 0 && value < LEAST_SPRING
    ? { code: 'too-little', text: `Only ${shown} springs back? A share such as 0.8 is typed as 80 %.` }
    : null;
}
