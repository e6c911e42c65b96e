import type { Source } from '../../methods/decide/standing/drawValues.ts';
import type { Measured } from '../schema.ts';
import type { Current, CurrentCable } from '../shapes/current.ts';
import type { EnduranceCable, EnduranceTest, Jacket } from '../shapes/jacket.ts';
import { ofMeasured } from './cableFigures.ts';
import { roundedEnd } from './criteria.ts';
import type { EnduranceFigures, FurtherFigures } from './prepare.ts';

/** A cable that was not worn through is taken to last up to so many times what it was seen to last. Common practice, no source. */
const AT_MOST_TIMES = 3;
/** The best end of a scale nobody stated, in times of the longest that was seen. */
const BEYOND_LONGEST = 1.5;

/** Figures of the other parts of the findings that cables may be ordered by. */
export function furtherFigures(parts: { jacket?: Jacket | null; current?: Current | null } = {}): FurtherFigures {
  return {
    endurance: enduranceFigures(parts.jacket?.endurance ?? []),
    current: carryingFigures(parts.current?.cables ?? []),
  };
}

function carryingFigures(cables: readonly CurrentCable[]): Map<string, Measured> {
  return new Map(cables.flatMap(({ cable, carrying }) => (carrying ? [[cable, carrying.current_A] as const] : [])));
}

function enduranceFigures(tests: readonly EnduranceTest[]): EnduranceFigures[] {
  const used = new Map<string, number>();
  return tests.flatMap((t): EnduranceFigures[] => {
    const sources = new Map<string, Source>();
    for (const c of t.cables) {
      const source = t.kind === 'passed' ? shareSource(c) : lastingSource(c);
      if (source) sources.set(c.cable, source);
    }
    if (sources.size === 0) return [];
    const name = t.test.trim().toLowerCase();
    const before = used.get(name) ?? 0;
    used.set(name, before + 1);
    const test = before === 0 ? name : `${name} ${before + 1}`;
    if (t.kind === 'passed') return [{ test, unit: '1', best: 1, suggested: false, sources }];
    const longest = Math.max(...t.cables.flatMap((c) => c.pieces.map((p) => p.amount)), 0);
    return [{ test, unit: t.unit, best: roundedEnd(BEYOND_LONGEST * longest) || 1, suggested: true, sources }];
  });
}

/** The median where both its ends are known; from what was surely borne upwards where pieces outlived the test. */
function lastingSource(c: EnduranceCable): Source | null {
  if (c.lasts) return ofMeasured(c.lasts);
  if (c.n === 0) return null;
  const borne = Math.max(...c.pieces.map((p) => p.amount), 0);
  const low = c.median?.interval[0] ?? (c.failed === 0 ? borne : 0);
  return { from: 'between', low, high: Math.max(AT_MOST_TIMES * borne, low) };
}

/** Share that comes through, by the rule of succession about it: mean (k + 1)/(n + 2). Laplace; from memory. */
function shareSource({ n, survived }: EnduranceCable): Source | null {
  if (n === 0) return null;
  const mean = (survived + 1) / (n + 2);
  const own = Math.sqrt((mean * (1 - mean)) / (n + 3));
  const figure = { ln: false, centre: mean, shared: new Map(), own, dof: Number.POSITIVE_INFINITY, scale: 1 };
  return { from: 'figure', figure };
}
