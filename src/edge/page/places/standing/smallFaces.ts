import type { Findings } from '../../../../findings/schema.ts';
import { sectionDrawing } from '../../../../report/section/sectionDrawing.ts';
import { sectionInput } from '../../../../report/section/sectionInput.ts';
import { variablesTheme } from '../../../../report/theme.ts';

/** What the largest face in the table takes, px. */
const LARGEST = 56;
/** Taken for the largest outer diameter where none was measured, mm. */
const USUAL = 14;

let drawn: { findings: Findings | null; faces: Map<string, string> } = { findings: null, faces: new Map() };

/** The cut faces of all cables at one scale, small; drawn once for the same findings. */
export function smallFaces(findings: Findings | null): ReadonlyMap<string, string> {
  if (findings === drawn.findings) return drawn.faces;
  const cables = findings?.cables ?? [];
  const largest = Math.max(0, ...cables.map((c) => c.outer_diameter?.value ?? 0)) || USUAL;
  const faces = new Map(
    cables.map((cable) => [
      cable.cable,
      sectionDrawing(sectionInput(cable), { scalePxPerMm: LARGEST / largest, theme: variablesTheme, size: LARGEST + 6 })
        .svg,
    ]),
  );
  drawn = { findings, faces };
  return faces;
}
