import { type FourWire, fourWire, plausibleResistance } from '../../methods/current/fourWire.ts';
import { conductorMetal, resistanceFactor } from '../../methods/current/materials.ts';
import { mean } from '../../numerics/describe.ts';
import { TWENTY_CELSIUS, ZERO_CELSIUS } from '../../units/dimension.ts';
import { FOOT } from '../../units/exactFactors.ts';
import { readLabel } from '../claims/label.ts';
import { measuredFromU } from '../measured.ts';
import type { CableReadings, TrialRows } from '../rows/rowsOfTrial.ts';
import { ownVariance, type TestPairs, testPairsOf, toolShare } from '../rows/testPairs.ts';
import type { CableFindings } from '../schema.ts';
import type { FourWireReading } from '../shapes/current.ts';

const ROOT_THREE = Math.sqrt(3);
const FEET = (1000 * FOOT[0]) / FOOT[1];
/** Where the contacts stood: ±1 mm and a tape's 0.1 %, as the assay takes it. Common practice, no source. */
const CONTACT_PLACING = 1e-3;
const CONTACT_TAPE = 1e-3;
/** A wire that warmed by more than this share in its own test is said to have. */
const MUCH_WARMED = 0.002;

/** Every four-wire resistance of a cable from voltages and currents, one for each piece. */
export function fourWiresOf(
  readings: CableReadings,
  found: CableFindings,
  tools: TrialRows['tools'],
  level: number,
): FourWireReading[] {
  return readings.specimens.flatMap(({ specimen }) => {
    const pairs = testPairsOf(specimen, readings.groups);
    return pairs ? [readingOf(specimen, pairs, readings, found, tools, level)] : [];
  });
}

function readingOf(
  specimen: string,
  pairs: TestPairs,
  readings: CableReadings,
  found: CableFindings,
  tools: TrialRows['tools'],
  level: number,
): FourWireReading {
  const taken = pairs.pairs.flatMap(({ voltage, current }) => voltage.temperature ?? current.temperature ?? []);
  const kelvin = taken.length > 0 ? mean(taken) : null;
  const shown: FourWireReading = {
    specimen,
    points: pairs.points.length,
    way: null,
    resistance: null,
    at_length_mm: pairs.atLength === null ? null : pairs.atLength * 1000,
    temperature_C: kelvin === null ? null : kelvin - ZERO_CELSIUS,
    per_metre: null,
    per_1000_ft: null,
    at_20C: null,
    emf_uV: null,
    warmed: null,
    plausible: null,
    text: '',
  };
  let wire: FourWire;
  try {
    wire = fourWire(pairs.points);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ...shown, text: `No resistance comes out of ${specimen}: ${error.message}.` };
  }
  const own = ownVariance(pairs, wire);
  const byTools = (wire.resistance * toolShare(pairs, wire.way)) / ROOT_THREE;
  const u = Math.sqrt(own.variance + byTools * byTools);
  const from = ['test_voltage', 'test_current'];
  // The scatter's degrees of freedom count as far as the scatter is the doubt (Welch and Satterthwaite).
  const dof = (own.dof * u ** 4) / own.variance ** 2;
  const figure = (value: number, share: number, unit: string, scale: number) =>
    measuredFromU(value, value * share, { scale, unit, level, from, dof });
  const share = u / wire.resistance;
  const result: FourWireReading = {
    ...shown,
    way: wire.way,
    resistance: figure(wire.resistance, share, 'mohm', 1e3),
    emf_uV: wire.emf === null ? null : { value: wire.emf * 1e6, u: wire.emfU === null ? null : wire.emfU * 1e6 },
    warmed: wire.warmed,
  };
  const { atLength } = pairs;
  if (atLength === null) return { ...result, text: wordsOf(result, `say how far apart the voltage contacts stood`) };
  const placing = (CONTACT_PLACING / atLength + CONTACT_TAPE) / ROOT_THREE;
  const perMetre = wire.resistance / atLength;
  const shareOfMetre = Math.hypot(share, placing);
  const { alpha } = conductorMetal(found.metal_found);
  const at20 = kelvin === null ? null : perMetre / resistanceFactor(alpha, kelvin);
  const byTemperature = alpha * tools.thermometer().sd;
  const area = areaOf(readings, found);
  const plausible = area === null ? null : plausibleResistance(perMetre / warmestFactor(kelvin), area);
  const full: FourWireReading = {
    ...result,
    per_metre: figure(perMetre, shareOfMetre, 'mohm/m', 1e3),
    per_1000_ft: figure(perMetre, shareOfMetre, 'ohm/kft', FEET),
    at_20C: at20 === null ? null : figure(at20, Math.hypot(shareOfMetre, byTemperature), 'mohm/m', 1e3),
    plausible,
  };
  return { ...full, text: wordsOf(full, kelvin === null ? 'note the temperature of the copper' : null) };
}

/** Copper's factor, so that a hot cable is not taken for two wires. */
const warmestFactor = (kelvin: number | null): number =>
  resistanceFactor(conductorMetal(null).alpha, kelvin ?? TWENTY_CELSIUS);

/** m² to judge by: the label's, else what mass or strands say; never what the resistance itself says. */
function areaOf(readings: CableReadings, found: CableFindings): number | null {
  const claimed = readLabel(readings.cable.label).area;
  if (claimed !== null) return claimed;
  const independent = readings.rows.some((r) => r.kind === 'mass' || r.kind === 'strands' || r.kind === 'strand mass');
  return independent && found.conductor_area ? found.conductor_area.value * 1e-6 : null;
}

function wordsOf(r: FourWireReading, lacks: string | null): string {
  const words: string[] = [];
  if (r.plausible === 'too high')
    words.push(
      'More ohms than any usual metal of that size has: a two-wire reading, or clamps that do not hold every strand. Clamp a ring round all strands and read again.',
    );
  if (r.plausible === 'too low')
    words.push(
      'Fewer ohms than pure copper of that size has: check the current, and the distance between the voltage contacts.',
    );
  if (r.way === 'one level')
    words.push('One current, one way round: a thermal voltage would stay in it. Turn the current round.');
  if (r.warmed !== null && r.warmed > MUCH_WARMED)
    words.push(
      `The test itself warmed the wire by ${(100 * r.warmed).toFixed(1)} % of its resistance at the largest current; the figure is for no current.`,
    );
  if (lacks) words.push(`To bring it to 20 °C per metre, ${lacks}.`);
  return words.join(' ');
}
