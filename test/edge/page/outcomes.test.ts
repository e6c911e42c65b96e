/** What the page's sentence counts, what stands under the cut face and what stands in the row are one and the same. */
import { readdirSync, readFileSync } from 'node:fs';
import type { ComponentChildren, VNode } from 'preact';
import { describe, expect, it } from 'vitest';
import { columnsFor } from '../../../src/edge/page/places/inside/columns.tsx';
import { outcomeWords, saidClaim, withoutClaim } from '../../../src/findings/cableOutcome.ts';
import { findingsOf } from '../../../src/findings/findings.ts';
import { pageSentence } from '../../../src/findings/pageSentence.ts';
import type { CableFindings, Claim } from '../../../src/findings/schema.ts';
import { fold } from '../../../src/trial/fold.ts';
import { defaultDisplayUnits } from '../../../src/units/display.ts';
import { cableOf, Bench as Said } from '../../findings/bench.ts';
import { read } from '../../report/package/files.ts';

/** The outcomes that a cell shows. */
function outcomesIn(cell: ComponentChildren): string[] {
  if (Array.isArray(cell)) return cell.flatMap(outcomesIn);
  if (cell === null || typeof cell !== 'object') return [];
  const { props } = cell as VNode<{ claim?: Claim; children?: ComponentChildren }>;
  return props.claim === undefined ? outcomesIn(props.children) : [outcomeWords(props.claim)];
}

/** Of each cable the outcomes in its row. */
function rows(cables: readonly CableFindings[]): string[][] {
  const { area, rest } = columnsFor(cables, defaultDisplayUnits);
  return cables.map((_, i) => [area, ...rest].flatMap((column) => outcomesIn(column.cells[i])));
}

const DEMO = new URL('../../../demo/', import.meta.url);
function demo(): CableFindings[] {
  const names = readdirSync(DEMO).filter((name) => name.endsWith('.csv'));
  const files = Object.fromEntries(names.map((name) => [name, new Uint8Array(readFileSync(new URL(name, DEMO)))]));
  return findingsOf(fold(read(files).entries), { draws: 0 }).cables.filter(({ role }) => role !== 'control');
}

/** One that was only weighed and holds far too little, one that was only weighed and holds enough, one not measured. */
function weighedOnly(): CableFindings[] {
  const said = new Said().carefulTools();
  for (const [cable, area] of [
    ['thin', 20],
    ['full', 33.6],
  ] as const)
    said.cable(cable, '2 AWG', 'OFC').piece(`${cable}-1`, cable).weigh(`${cable}-1`, area);
  const findings = said.cable('bare', '2 AWG', 'OFC').findings();
  return ['thin', 'full', 'bare'].map((cable) => cableOf(findings, cable));
}

describe.each([
  ['the demo', demo],
  ['cables of which only a mass is known', weighedOnly],
])('%s', (_what, cables) => {
  const all = cables();

  it('shows in each row the outcome that is said of the cable', () => {
    const shown = rows(all);
    all.forEach((cable, i) => {
      const said = saidClaim(cable);
      if (said !== null && said.outcome !== null) expect(shown[i]).toContain(said.outcome);
    });
  });

  it('counts in the sentence what the rows show', () => {
    const short = rows(all).filter((row, i) => row.includes('falls short') && saidClaim(all[i]!)?.reading !== 'metal');
    const counted = /\b(one|two|three|four|five|six) falls? short/i.exec(pageSentence(all))?.[1]?.toLowerCase();
    const words = ['none', 'one', 'two', 'three', 'four', 'five', 'six'];
    expect(counted ?? 'none').toBe(words[short.length]);
  });
});

it('a weighed cable that holds too little has its outcome in its row, though size and metal are open', () => {
  const [thin, , bare] = weighedOnly();
  expect(rows([thin!])).toEqual([['falls short', 'not settled', 'not settled']]);
  expect(saidClaim(bare!)).toBeNull();
  expect(withoutClaim(bare!)).toBe('not measured');
});
