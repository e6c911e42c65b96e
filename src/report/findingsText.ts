import type { Findings } from '../findings/schema.ts';

/** Findings as they are printed and published (`findings.json`): indented JSON, its keys in the order of their schema. */
export function findingsText(findings: Findings): string {
  return `${JSON.stringify(findings, null, 2)}\n`;
}
