import { wholeText } from '../../units/wholeText.ts';
import { measuredFromU } from '../measured.ts';
import { doubt } from '../rows/cableGroups.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import { strandDiameter } from '../rows/strandRows.ts';
import type { Measured, Warning } from '../schema.ts';

const ROOT_THREE = Math.sqrt(3);
/** Area that a strand diameter leaves open beyond this share decides nothing. */
const CANNOT_DECIDE = 0.05;
/** Share of its mass to which a sample of strands should be weighed. */
const WEIGH_TO = 0.01;
/** Beyond this the sample was too small to help. */
const TOO_SMALL = 0.02;

/** Count and diameter of the strands as figures, with a sentence that sets the count beside the label's. */
export function strandsOf(c: CableReadings, level: number) {
  const { count } = c;
  const strands: Measured | null = count
    ? measuredFromU(count.value, count.sd, { scale: 1, unit: '1', level, from: [count.quantity], dof: count.dof })
    : null;
  const d = strandDiameter(c.groups);
  const diameter = d
    ? measuredFromU(
        d.value,
        Math.hypot(doubt(d.group) / d.group.mean / ROOT_THREE, Math.sqrt(d.group.scatter.variance) / d.group.mean) *
          d.value,
        {
          scale: 1e3,
          unit: 'mm',
          level,
          from: [d.group.quantity],
        },
      )
    : null;
  return { strands, diameter, sentence: strands && strandSentence(strands, c) };
}

function strandSentence(strands: Measured, c: CableReadings): string {
  const [low, high] = strands.interval.map(Math.round);
  const found =
    low === high
      ? `${wholeText(low)}${low === 1 ? ' strand' : ' strands'}`
      : `${wholeText(low)} to ${wholeText(high)} strands`;
  const how = c.count ? ` (${c.count.how})` : '';
  const claimed = c.cable.label.strands;
  if (claimed === null) return `${found}${how}; the label does not say how many.`;
  if (claimed < low) return `${found}${how}; the label says ${wholeText(claimed)}: more than it says.`;
  return claimed <= high
    ? `${found}${how}; the label says ${wholeText(claimed)}: agrees.`
    : `${found}${how}; the label says ${wholeText(claimed)}: fewer than it says.`;
}

/** Tools that cannot decide what they were used for, said where they were used. */
export function strandWarnings(c: CableReadings): Warning[] {
  const warnings: Warning[] = [];
  const d = strandDiameter(c.groups);
  if (d && d.group.quantity === 'strand_diameter') {
    const open = (2 * doubt(d.group)) / d.group.mean;
    if (open > CANNOT_DECIDE)
      warnings.push({
        code: 'tool-cannot-decide',
        cable: c.cable.cable,
        text: `The ${d.group.tool.name} (± ${(doubt(d.group) * 1e3).toFixed(3)} mm) on a ${(d.value * 1e3).toFixed(2)} mm strand leaves ± ${Math.round(100 * open)} % of the area open: it cannot decide. Use a micrometer, or measure many turns side by side on a rod.`,
      });
  }
  for (const specimen of c.groups.specimensWith('strand_sample_mass')) {
    const mass = c.groups.on(specimen, 'strand_sample_mass');
    const count = c.groups.on(specimen, 'strand_sample_count');
    if (!mass || !count) continue;
    const share = doubt(mass) / mass.mean;
    if (share <= TOO_SMALL) continue;
    const needed = Math.ceil((count.mean * share) / WEIGH_TO);
    warnings.push({
      code: 'too-few-strands-weighed',
      cable: c.cable.cable,
      text: `${wholeText(count.mean)} strands weigh ${(mass.mean * 1e3).toFixed(2)} g, which the ${mass.tool.name} knows to ${Math.round(100 * share)} %. Weigh about ${wholeText(needed)} strands together for 1 %: a whole bundle is a good number.`,
    });
  }
  return warnings;
}
