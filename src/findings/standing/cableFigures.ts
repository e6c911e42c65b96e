import type { DoubtfulFigure, Source } from '../../methods/decide/standing/drawValues.ts';
import { GRAVITY } from '../../units/exactFactors.ts';
import type { FlexGround } from '../flex/flex.ts';
import type { LnFigure } from '../flex/lnFigure.ts';
import { doubt } from '../rows/cableGroups.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Measured } from '../schema.ts';
import type { Flex } from '../shapes/flex.ts';

const ROOT_THREE = Math.sqrt(3);
const GRAMS = 1000;

/** A cable with everything that a criterion may ask of it. */
export interface CableGround {
  found: CableFindings;
  readings: CableReadings;
  /** Its number in the joint assay; −1 when it is not in it. */
  at: number;
  flex: Flex | null;
  ground: FlexGround;
}

/** A figure of the findings by itself: by its logarithm when its interval lies above zero. */
export function ofMeasured(m: Measured): Source {
  const positive = m.interval[0] > 0 && m.value > 0;
  const figure: DoubtfulFigure = {
    ln: positive,
    centre: positive ? Math.log(m.value) : m.value,
    shared: new Map(),
    own: positive ? m.u / m.value : m.u,
    dof: Number.POSITIVE_INFINITY,
    scale: 1,
  };
  return m.u === 0 ? { from: 'known', value: m.value } : { from: 'figure', figure };
}

function ofLn(figure: LnFigure, scale: number): Source {
  const { ln, shared, own, dof } = figure;
  return { from: 'figure', figure: { ln: true, centre: ln, shared, own: Math.sqrt(own), dof, scale } };
}

/** A length read by one tool on all cables: the tool's limit is one error for all of them. */
function byOneTool(m: Measured, quantity: string, { readings }: CableGround): Source {
  const groups = readings.groups.of(quantity);
  const [first] = groups;
  if (!first || groups.some((g) => g.tool.id !== first.tool.id)) return ofMeasured(m);
  const limit = (1000 * Math.max(...groups.map(doubt))) / ROOT_THREE;
  const own = Math.sqrt(Math.max(m.u * m.u - limit * limit, 0));
  return {
    from: 'figure',
    figure: {
      ln: false,
      centre: m.value,
      shared: new Map([[`${first.tool.id} on ${quantity}`, limit]]),
      own,
      dof: Number.POSITIVE_INFINITY,
      scale: 1,
    },
  };
}

/** Further figures that the joint draws give besides area and copper, in this order. */
export const FURTHER = ['resistancePerMetre'] as const;

const MM2 = 1e6;
const MILLIOHM = 1000;

type Find = (cable: CableGround) => Source | null;

const flexCable = ({ flex, found }: CableGround) => flex?.cables.find((c) => c.cable === found.cable) ?? null;

/** How each criterion is found on a cable; null where it was not measured. */
export const FINDERS: Readonly<Record<string, Find>> = {
  copper: ({ found, at }) => {
    const claimed = found.label.claimed_area_mm2;
    if (!found.copper_of_claim || claimed === null || at < 0) return null;
    return { from: 'assay', cable: at, figure: 'copper', scale: MM2 / claimed };
  },
  area: ({ found, at }) =>
    found.conductor_area && at >= 0 ? { from: 'assay', cable: at, figure: 'area', scale: MM2 } : null,
  resistance: ({ found, at }) =>
    found.resistance_20C && at >= 0 ? { from: 'assay', cable: at, figure: 0, scale: MILLIOHM } : null,
  mass: ({ ground, found }) => {
    const weight = ground.weight.get(found.cable);
    return weight ? ofLn(weight, GRAMS / GRAVITY) : null;
  },
  outer_diameter: (c) => c.found.outer_diameter && byOneTool(c.found.outer_diameter, 'outer_diameter', c),
  stiffness: ({ ground, found }) => {
    const stiffness = ground.stiffness.get(found.cable);
    return stiffness ? ofLn(stiffness, 1) : null;
  },
  judged: ({ ground, found }) => {
    const thing = ground.ease?.cables.indexOf(found.cable) ?? -1;
    return thing < 0 ? null : { from: 'ability', thing };
  },
  cold: (c) => {
    const cold = flexCable(c)?.cold_stiffening;
    return cold ? ofMeasured(cold.ratio) : null;
  },
  coil: (c) => {
    const coil = flexCable(c)?.coil_ratio;
    return coil ? ofMeasured(coil) : null;
  },
  wall: (c) => {
    const { wall } = c.found;
    return wall && byOneTool(wall.least ?? wall.mean, 'wall_thickness', c);
  },
  concentricity: ({ found }) => (found.wall?.concentricity ? ofMeasured(found.wall.concentricity) : null),
};
