import type { CableReadings } from '../rows/rowsOfTrial.ts';

export const NOT_WEIGHED = 'No conductor was weighed (with a length), so the copper held cannot be judged by weight.';
export const NO_RESISTANCE = 'No resistance was read, so mass and ohms together cannot name the metal.';
export const NO_CONTACT_DISTANCE =
  'Ohms were read, but not how far apart the voltage contacts stood: add that distance at the Bench, and they count.';

/** What was not read on a cable, in words, and what its absence leaves open. */
export function missingOf(c: CableReadings): string[] {
  const has = (kind: string) => c.rows.some((r) => r.kind === kind);
  const list: string[] = [];
  if (!has('mass')) list.push(NOT_WEIGHED);
  if (!has('resistance'))
    list.push(c.unusable.some(({ code }) => code === 'no-contact-distance') ? NO_CONTACT_DISTANCE : NO_RESISTANCE);
  if (c.rows.some((r) => r.kind === 'resistance' && r.temperature?.input.startsWith('temperature not taken')))
    list.push(
      "The copper's temperature was not taken with the ohms; a wide range stands in for it. Tape a thermometer to the copper.",
    );
  if (!c.groups.all.some((g) => g.quantity === 'conductor_length' || g.quantity === 'specimen_length') && has('mass'))
    list.push('The length of the weighed piece was not measured; the length it was cut to stands in, within 1 mm.');
  if (!c.groups.of('outer_diameter').length)
    list.push('No outer diameter was read, so the section cannot be drawn whole.');
  return list;
}
