import { describe, expect, it } from 'vitest';
import { logJob } from '../../../src/edge/page/worker/logJob.ts';
import { previewLog } from '../../../src/methods/current/log/columns.ts';

const HEAD = 'time s,copper C,room C,amps A\n';
const row = (s: number) => `${s},${(20 + 30 * (1 - Math.exp(-s / 500))).toFixed(3)},20,150\n`;
const log = (rows: number, step: number) => HEAD + Array.from({ length: rows }, (_, i) => row(i * step)).join('');

function asked(text: string, tell: (characters: number) => void = () => {}) {
  const { layout, columns } = previewLog(text.slice(0, 10_000))!;
  return logJob(
    { text, layout, columns, stated: { specimen: 'a', current: null, ambient: null }, metal: 'copper' },
    tell,
  );
}

describe('a log in the worker', () => {
  it('comes down to some hundred rows that say the same, and tells how far it is', () => {
    const text = log(100_000, 0.04);
    const heard: number[] = [];
    const found = asked(text, (done) => heard.push(done));
    expect(heard.length).toBeGreaterThan(1);
    expect(heard.at(-1)).toBe(text.length);
    expect([...heard].sort((a, b) => a - b)).toEqual(heard);
    expect(found.readings).toBe(100_000);
    expect(found.rows.length).toBeGreaterThan(300);
    expect(found.rows.length).toBeLessThan(500);
    expect(found.seconds).toBeCloseTo(3999.96, 2);
    expect(found.heatings).toHaveLength(1);
    expect(found.heatings[0]!.current).toBeCloseTo(150, 6);
    expect(found.heatings[0]!.steadyRise!).toBeGreaterThan(29.5);
    expect(found.heatings[0]!.steadyRise!).toBeLessThan(30.5);
  });

  it('says of a short one that it settles nothing', () => {
    expect(asked(log(200, 1)).heatings).toMatchObject([{ steadyRise: null, refused: 'too short' }]);
  });

  it('counts rows without a time, and gaps', () => {
    const lines = log(400, 10).split('\n');
    lines.splice(50, 1, 'never,30,20,150');
    lines.splice(200, 40);
    const found = asked(lines.join('\n'));
    expect(found.unreadable).toEqual({ rows: 1, first: 50 });
    expect(found.gaps).toBe(1);
  });

  it.each([
    ['a clock that was set back', `${log(100, 10)}${row(300)}`, 'runs backwards at row 101'],
    ['no current', log(100, 10).replaceAll(',150\n', ',0\n'), 'The current is 0 A in every row'],
    ['columns swapped', log(100, 30).replace('copper C,room C', 'room C,copper C'), 'the two columns are swapped'],
  ])('refuses %s by name', (_what, text, words) => {
    expect(() => asked(text)).toThrow(words);
  });
});
