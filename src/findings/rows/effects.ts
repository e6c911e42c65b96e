import type { OwnEffect, SharedEffect } from '../../methods/assay/row.ts';
import type { Group } from './groups.ts';
import type { ToolBox } from './tools.ts';

/** What a group's tool and scatter do to ln y when y goes with mean^power · sign-free share of the group in y. */
export interface Effects {
  shared: SharedEffect[];
  own: OwnEffect[];
}

const UNIFORM = 1 / 3;

/** Name of the unknown that the scatter of a group's repeats is. */
export function repeatsInput(g: Group): string {
  return `${g.specimen} ${g.quantity} ${g.tool.id} repeats`;
}

/**
 * Effects of one group of readings on ln y, where ∂ ln y / ∂ mean = slope (1/SI unit), to first order; `power` is kept apart
 * so that draws can follow the exact curve.
 *
 * @param slope relative slope at power 1: 1/mean for a plain factor
 * @param share +1, −1 or another multiplier of the power: −1 for a length that divides a mass, 2 for a diameter
 */
export function effectsOf(g: Group, tools: ToolBox, unit: string, slope: number, share: number): Effects {
  const shared: SharedEffect[] = [];
  const zero = tools.zeroOf(g.tool, unit);
  if (zero) shared.push({ input: zero.input, slope, power: share });
  const gain = tools.gainOf(g.tool);
  if (gain) shared.push({ input: gain.input, slope: slope * g.mean, power: share });
  const own: OwnEffect[] = [];
  if (g.scatter.variance > 0)
    own.push({
      input: repeatsInput(g),
      label: 'Scatter of repeats',
      slope: slope * share,
      variance: g.scatter.variance,
      dof: g.scatter.dof,
    });
  return { shared, own };
}

/** Own doubt, uniform within ± halfWidth of ln y. */
export function ownUniform(input: string, label: string, halfWidth: number): OwnEffect {
  return { input, label, slope: 1, variance: halfWidth ** 2 * UNIFORM, dof: Infinity };
}

/** Own doubt of a given standard deviation of ln y. */
export function ownNormal(input: string, label: string, sd: number): OwnEffect {
  return { input, label, slope: 1, variance: sd ** 2, dof: Infinity };
}
