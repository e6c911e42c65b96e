import { USUAL_LAYER_HEAT_CAPACITY } from '../materials.ts';
import { type HeatedCable, jacketArea, type Surroundings, wallResistance } from './run.ts';
import { bundleConductivity, girthDiameter } from './shape.ts';

/**
 * A cable or bundle cut into rings for heat that changes with time, one metre of it: nodes from the middle to the surface,
 * what each holds, what passes between neighbours, and the share of the heat that each makes.
 */
export interface Rings {
  /** J/K of each node. */
  capacity: Float64Array;
  /** W/K from node i to node i + 1. */
  conductance: Float64Array;
  /** Share of the whole heat made at each node; they sum to 1. */
  made: Float64Array;
  /** W/K from a cable's own conductor to the middle of the bundle; infinite for one cable by itself. */
  ownWall: number;
}

interface Ring {
  inner: number;
  outer: number;
  conductivity: number;
  heatCapacity: number;
}

/** Rings of the wall, of a bundle and of a layer. Conductances between them are exact in steady state whatever the number. */
const WALL_RINGS = 6;
const BUNDLE_RINGS = 10;
const LAYER_RINGS = 6;

/** Adds rings between two radii: half of what a ring holds to either of its edges. */
function addRings(nodes: { capacity: number[]; conductance: number[] }, ring: Ring, count: number): void {
  const step = (ring.outer - ring.inner) / count;
  for (let i = 0; i < count; i++) {
    const from = ring.inner + i * step;
    const to = from + step;
    const middle = from + step / 2;
    const heat = (a: number, b: number) => Math.PI * (b * b - a * a) * ring.heatCapacity;
    nodes.capacity[nodes.capacity.length - 1] += heat(from, middle);
    nodes.capacity.push(heat(middle, to));
    nodes.conductance.push(
      from > 0 ? (2 * Math.PI * ring.conductivity) / Math.log(to / from) : 2 * Math.PI * ring.conductivity,
    );
  }
}

/** Rings of one cable: its conductor as one node, for metal evens out, then wall and layer. */
function ringsOfOne(cable: HeatedCable): { capacity: number[]; conductance: number[]; made: number[] } {
  const nodes = { capacity: [cable.metalVolume * cable.metal.heatCapacity], conductance: [] as number[] };
  const { conductivity, heatCapacity } = cable.jacket;
  if (cable.outerDiameter > cable.bundleDiameter)
    addRings(
      nodes,
      { inner: cable.bundleDiameter / 2, outer: cable.outerDiameter / 2, conductivity, heatCapacity },
      WALL_RINGS,
    );
  return { ...nodes, made: nodes.capacity.map((_, i) => (i === 0 ? 1 : 0)) };
}

/** Rings of a bundle: one body that holds and conducts on the average what its cables and gaps do, heat made evenly across it. */
function ringsOfBundle(
  cable: HeatedCable,
  bundle: number,
): { capacity: number[]; conductance: number[]; made: number[] } {
  const radius = girthDiameter(cable.outerDiameter, bundle) / 2;
  const held = bundle * (cable.metalVolume * cable.metal.heatCapacity + jacketArea(cable) * cable.jacket.heatCapacity);
  const conductivity = bundleConductivity(cable, bundle);
  const area = Math.PI * radius * radius;
  const step = radius / BUNDLE_RINGS;
  const capacity: number[] = [];
  const conductance: number[] = [];
  for (let i = 0; i <= BUNDLE_RINGS; i++) {
    const from = Math.max(0, (i - 0.5) * step);
    const to = Math.min(radius, (i + 0.5) * step);
    capacity.push((held * Math.PI * (to * to - from * from)) / area);
    // The flux of heat made evenly passes the middle of a ring, and so the steady drop is that of the exact parabola.
    if (i < BUNDLE_RINGS) conductance.push(2 * Math.PI * conductivity * (i + 0.5));
  }
  return { capacity, conductance, made: capacity.map((c) => c / held) };
}

/** The rings of a cable where it runs. */
export function ringsOf(cable: HeatedCable, { bundle, layer }: Surroundings): Rings {
  const nodes = bundle > 1 ? ringsOfBundle(cable, bundle) : ringsOfOne(cable);
  if (layer) {
    const inner = girthDiameter(cable.outerDiameter, bundle) / 2;
    addRings(
      nodes,
      {
        inner,
        outer: inner + layer.thickness,
        conductivity: layer.conductivity,
        heatCapacity: USUAL_LAYER_HEAT_CAPACITY,
      },
      LAYER_RINGS,
    );
  }
  const wall = wallResistance(cable);
  return {
    capacity: Float64Array.from(nodes.capacity),
    conductance: Float64Array.from(nodes.conductance),
    made: Float64Array.from(nodes.capacity, (_, i) => nodes.made[i] ?? 0),
    ownWall: bundle > 1 && wall > 0 ? bundle / wall : Number.POSITIVE_INFINITY,
  };
}
