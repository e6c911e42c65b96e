/** Tools that a tester may tick, each with the row that describes it; limits are left blank, so that the usual ones are taken. */
export interface OwnedTool {
  /** Name in the list, and the instrument's own name. */
  tool: string;
  kind: string;
  resolution: string;
  unit: string;
}

const owned = (tool: string, resolution: string, unit: string, kind = tool): OwnedTool => ({
  tool,
  kind,
  resolution,
  unit,
});

/** Smallest steps are what such tools usually show: common practice, no source. To be changed to what the display shows. */
export const OWNED_TOOLS: readonly OwnedTool[] = [
  owned('kitchen scale', '1', 'g'),
  owned('pocket scale', '0.01', 'g'),
  owned('steel rule', '0.5', 'mm'),
  owned('tape', '1', 'mm'),
  owned('digital caliper', '0.01', 'mm'),
  owned('plastic caliper', '0.1', 'mm'),
  owned('micrometer', '0.001', 'mm'),
  owned('four-wire meter', '0.001', 'mohm'),
  owned('shunt and millivolts', '0.001', 'mohm'),
  owned('thermometer', '0.1', 'C'),
  owned('infrared thermometer', '0.1', 'C'),
  owned('multimeter', '0.1', 'ohm'),
];

/** The tool of that name, whatever the case; null for one that is not in the list. */
export function ownedTool(name: string): OwnedTool | null {
  const wanted = name.trim().toLowerCase();
  return OWNED_TOOLS.find(({ tool }) => tool === wanted) ?? null;
}
