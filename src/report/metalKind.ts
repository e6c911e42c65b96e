/** How the metal found is drawn: one look per kind, and the crossed ruling of the unknown for everything else. */
import type { Theme } from './theme.ts';

export type MetalKind = 'copper' | 'tinned copper' | 'copper-clad aluminium' | 'aluminium' | 'unknown';

/** The kind that a finding's `metal_found` is drawn as. Metals with no look of their own (steel, mixed, other) are drawn as unknown. */
export function metalKind(found: string | null): MetalKind {
  switch (found) {
    case 'copper':
    case 'tinned copper':
    case 'copper-clad aluminium':
    case 'aluminium':
      return found;
    case 'tinned clad aluminium':
      return 'copper-clad aluminium';
    default:
      return 'unknown';
  }
}

/** True when the metal is ruled at 45° over its fill. */
export const isRuled = (kind: MetalKind): boolean => kind === 'aluminium' || kind === 'copper-clad aluminium';

/** Fill of the metal's disc or bar; null for unknown, which has none. */
export function metalFill(kind: MetalKind, theme: Theme): string | null {
  if (kind === 'unknown') return null;
  return isRuled(kind) ? theme.alu : theme.copper;
}

/** Line colour of the strands. */
export function strandColour(kind: MetalKind, theme: Theme): string {
  if (kind === 'copper') return theme.copperLine;
  if (kind === 'tinned copper') return theme.tinLine;
  return kind === 'unknown' ? theme.edge : theme.aluLine;
}
