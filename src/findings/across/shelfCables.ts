import { DEFAULT_LEVELS } from '../../methods/assay/conformity.ts';
import { cell } from '../../trial/cells.ts';
import type { Cable, Reading, Trial } from '../../trial/trial.ts';
import { saidClaim } from '../cableOutcome.ts';
import { temperatureRange } from '../flex/atTemperature.ts';
import { assayGroundOf } from '../ground.ts';
import type { CableFindings } from '../schema.ts';
import type { Flex } from '../shapes/flex.ts';
import type { ShelfCable } from '../shapes/shelf.ts';
import { valueOfCable } from '../standing/money.ts';

/** Letters of a day, `2026-11-25`. */
const DAY = 10;
const DAY_SHAPE = /^\d{4}-\d{2}-\d{2}/;

const dayIn = (text: string): string | null => (DAY_SHAPE.test(text) ? text.slice(0, DAY) : null);

/** Day of the last of these readings; null when none says when it was taken. */
function lastDay(readings: readonly Reading[]): string | null {
  const days = readings.flatMap(({ row }) => dayIn(cell(row, 'at')) ?? []);
  return days.reduce<string | null>((last, day) => (last === null || day > last ? day : last), null);
}

function suppliedIn(cable: Cable): boolean | null {
  const said = cell(cable.row, 'supplied_free').toLowerCase();
  if (said === '') return null;
  return !/^(no|false|0|paid|bought)$/.test(said);
}

const stateOf = ({ blinding, parts }: Trial): ShelfCable['state'] =>
  blinding.blind ? 'blind' : parts.some(({ hidden }) => !hidden) ? 'sealed in part' : 'open';

function lineOf(trial: Trial, bending: Flex | null, found: CableFindings, cable: Cable): ShelfCable {
  const readings = trial.readings.filter((r) => r.cable === cable.cable && r.standing === 'counted');
  const flex = bending?.cables.find((c) => c.cable === cable.cable) ?? null;
  const value = valueOfCable(cable, found, trial.cables);
  return {
    trial: trial.trial,
    title: trial.title,
    state: stateOf(trial),
    day: lastDay(readings) ?? dayIn(trial.openedOn ?? ''),
    cable: cable.cable,
    name: cable.name,
    role: cable.role,
    lot: cell(cable.row, 'lot'),
    shared_name: cell(cable.row, 'shared_name'),
    supplied: suppliedIn(cable),
    label: { size: cable.label.size, metal: cable.label.metal, area_mm2: found.label.claimed_area_mm2 },
    outcome: saidClaim(found)?.outcome ?? null,
    metal_found: found.metal_found,
    conductor_area: found.conductor_area,
    copper_of_claim: found.copper_of_claim,
    resistance_20C: found.resistance_20C,
    outer_diameter: found.outer_diameter,
    bending_stiffness: flex?.bending_stiffness ?? null,
    wall: found.wall?.mean ?? null,
    price_per_m: value.price_per_m,
    currency: value.currency,
    price_at_one_mohm: value.price_per_m_at_one_mohm,
    temperature_C: temperatureRange(readings),
    bent_at_C: flex?.bending_stiffness ? flex.temperature_C : null,
  };
}

/**
 * What the shelf remembers of each cable of a trial, in closed form: jackets and current are not worked out for it. Nothing of a
 * trial that was put away. A blind trial must come by its codes (see `trial/byCode.ts`): this hides nothing by itself.
 */
export function shelfCables(trial: Trial, level: number): ShelfCable[] {
  if (trial.putAway !== null) return [];
  // Judged pairs say nothing of a line, and are the slowest to work out.
  const { cables: found, bending } = assayGroundOf({ ...trial, judgements: [] }, level, DEFAULT_LEVELS);
  const cables = new Map(trial.cables.map((cable) => [cable.cable, cable]));
  return found.flatMap((each) => {
    const cable = cables.get(each.cable);
    return cable === undefined ? [] : [lineOf(trial, bending.flex, each, cable)];
  });
}

/** One name for a line among all lines of a shelf. */
export const shelfKey = ({ trial, cable }: Pick<ShelfCable, 'trial' | 'cable'>): string => `${trial}\u001f${cable}`;
