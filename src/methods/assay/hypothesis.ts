import type { MetalHypothesis } from '../metal/hypotheses.ts';
import { COMMON, FAULT_ODDS, FAULT_SIZE, LN_AREA, LN_LAY, LN_LAY_SOLID } from './prior.ts';
import { type AssayCable, type AssayRow, COEFFICIENTS, FAULTS, type Fault, faultOf, type SharedInput } from './row.ts';

/** A supposition about one cable: its metal, and which group of its readings, if any, holds a gross error. */
export interface Supposition {
  metal: MetalHypothesis;
  fault: Fault | null;
  /** ln of prior odds times the likelihood of what was seen. */
  lnPrior: number;
}

/** All suppositions worth weighing for a cable: every metal, with no fault and with each fault that its readings could hold. */
export function suppositions(cable: AssayCable, metals: readonly MetalHypothesis[]): Supposition[] {
  const present = FAULTS.filter((f) => cable.rows.some((row) => faultOf(row.kind) === f));
  const faults: (Fault | null)[] = [null, ...present];
  return metals.flatMap((metal) =>
    faults.map((fault) => ({
      metal,
      fault,
      lnPrior: Math.log(metal.prior) + (cable.sight[metal.metal] ?? 0) + Math.log(FAULT_ODDS[fault ?? 'none']),
    })),
  );
}

/** The cable's equations under one supposition: y = G x + S b + e, x ~ N(mu, diag P), b ~ unit shared inputs, e ~ N(0, V). */
export interface System {
  n: number;
  /** n: readings with the temperature taken out and the expected fault taken off. */
  y: Float64Array;
  /** n × 4 */
  G: Float64Array;
  /** n × nb, per standard deviation of each shared input */
  S: Float64Array;
  /** n × n: what is not shared between cables */
  V: Float64Array;
  /** 4: prior mean of (ln A, ln k, ln ρm, ln ρe) */
  mu: Float64Array;
  /** 4: prior variances */
  P: Float64Array;
}

/** Index of each shared input in b. */
export type SharedIndex = ReadonlyMap<string, { at: number; sd: number }>;

/** Gives every shared input its place in b. */
export function indexShared(inputs: readonly SharedInput[]): SharedIndex {
  return new Map(inputs.map((input, at) => [input.input, { at, sd: input.sd }]));
}

/** The constants that cables have in common, as shared inputs. */
export function commonInputs(): SharedInput[] {
  const labels = {
    'copper density': "Copper's density",
    'copper resistivity': "Copper's resistivity",
    'usual lay': 'How cable is usually laid',
  };
  return (Object.keys(COMMON) as (keyof typeof COMMON)[]).map((input) => ({
    input,
    label: labels[input],
    limit: COMMON[input],
    unit: '1',
    shape: 'normal',
    sd: COMMON[input],
    assumed: false,
  }));
}

/** Variances of x that are a cable's own: the whole prior variance less the part common to all cables. */
function ownPrior(metal: MetalHypothesis, control: boolean): { mu: Float64Array; P: Float64Array } {
  const lay = control ? LN_LAY_SOLID : LN_LAY;
  const rest = (sd: number, common: number) => Math.max(sd * sd - common * common, 1e-8);
  const shares = metal.sharesCopperConstants;
  return {
    mu: Float64Array.of(LN_AREA.mean, lay.mean, metal.lnDensity.mean, metal.lnResistivity.mean),
    P: Float64Array.of(
      LN_AREA.sd ** 2,
      control ? lay.sd ** 2 : rest(lay.sd, COMMON['usual lay']),
      rest(metal.lnDensity.sd, shares ? COMMON['copper density'] : 0),
      rest(metal.lnResistivity.sd, shares ? COMMON['copper resistivity'] : 0),
    ),
  };
}

function addOwn(V: Float64Array, rows: readonly AssayRow[]): void {
  const n = rows.length;
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let v = 0;
      for (const a of rows[i].own)
        for (const b of rows[j].own) if (a.input === b.input) v += a.slope * b.slope * a.variance;
      V[i * n + j] = v;
      V[j * n + i] = v;
    }
}

/** What does not change from one supposition to the next: G, the own variances, the instruments' slopes. */
export interface CableFrame {
  cable: AssayCable;
  n: number;
  nb: number;
  G: Float64Array;
  V: Float64Array;
  S: Float64Array;
  index: SharedIndex;
}

/** Lays out a cable's rows once, for all suppositions. */
export function frame(cable: AssayCable, index: SharedIndex): CableFrame {
  const { rows } = cable;
  const n = rows.length;
  const nb = index.size;
  const G = new Float64Array(n * 4);
  const S = new Float64Array(n * nb);
  const V = new Float64Array(n * n);
  const lay = index.get('usual lay');
  rows.forEach((row, i) => {
    G.set(COEFFICIENTS[row.kind], i * 4);
    for (const effect of row.shared) {
      const place = index.get(effect.input);
      if (!place) throw new RangeError(`row "${row.text}" leans on an unknown shared input "${effect.input}"`);
      S[i * nb + place.at] += effect.power * effect.slope * place.sd;
    }
    if (lay && !cable.control) S[i * nb + lay.at] += G[i * 4 + 1] * lay.sd;
  });
  addOwn(V, rows);
  return { cable, n, nb, G, V, S, index };
}

/** How the rows lean on the shared inputs under one metal, n × nb; the frame's own array where the metal changes nothing. */
export function slopesUnder(f: CableFrame, metal: MetalHypothesis): Float64Array {
  const { nb, index, cable, G } = f;
  if (!metal.sharesCopperConstants && !cable.rows.some((row) => row.temperature)) return f.S;
  const S = f.S.slice();
  const density = index.get('copper density');
  const resistivity = index.get('copper resistivity');
  cable.rows.forEach(({ temperature }, i) => {
    const place = temperature && index.get(temperature.input);
    if (place) S[i * nb + place.at] += (metal.alpha / (1 + metal.alpha * temperature.above20)) * place.sd;
    if (!metal.sharesCopperConstants) return;
    if (density) S[i * nb + density.at] += G[i * 4 + 2] * density.sd;
    if (resistivity) S[i * nb + resistivity.at] += G[i * 4 + 3] * resistivity.sd;
  });
  return S;
}

/**
 * The frame under one supposition. Arrays that no supposition changes are shared with the frame: read only.
 *
 * @param S what {@link slopesUnder} gives for its metal
 */
export function systemUnder(f: CableFrame, { metal, fault }: Supposition, S = slopesUnder(f, metal)): System {
  const { n, cable } = f;
  const y = new Float64Array(n);
  const V = fault ? f.V.slice() : f.V;
  const holdsFault = cable.rows.map((row) => fault !== null && faultOf(row.kind) === fault);
  cable.rows.forEach((row, i) => {
    y[i] = row.y;
    if (row.temperature) y[i] -= Math.log(1 + metal.alpha * row.temperature.above20);
    if (fault && holdsFault[i]) y[i] -= FAULT_SIZE[fault].mean;
  });
  if (fault)
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) if (holdsFault[i] && holdsFault[j]) V[i * n + j] += FAULT_SIZE[fault].sd ** 2;
  return { n, y, G: f.G, S, V, ...ownPrior(metal, cable.control) };
}

/** The systems of all suppositions of a cable, in their order; those of one metal have their slopes in common. */
export function systemsUnder(f: CableFrame, list: readonly Supposition[]): System[] {
  const slopes = new Map<MetalHypothesis, Float64Array>();
  return list.map((supposition) => {
    const { metal } = supposition;
    const S = slopes.get(metal) ?? slopesUnder(f, metal);
    slopes.set(metal, S);
    return systemUnder(f, supposition, S);
  });
}
