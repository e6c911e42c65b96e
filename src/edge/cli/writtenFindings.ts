/** Findings as they are written in a package. */
import type { Findings } from '../../findings/schema.ts';

/** The findings that came along; null where they are none. */
export function readFindings(written: string | Uint8Array): Findings | null {
  const parsed = parsedJson(
    typeof written === 'string' ? written : new TextDecoder().decode(written),
  ) as Findings | null;
  const engine = parsed?.engine;
  return typeof engine?.content === 'string' &&
    typeof engine.level === 'number' &&
    typeof engine.draws === 'number' &&
    Array.isArray(parsed?.cables)
    ? parsed
    : null;
}

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** Computed findings as they come back once written: without what JSON does not hold. */
export const asWritten = (findings: Findings): Findings => JSON.parse(JSON.stringify(findings)) as Findings;
