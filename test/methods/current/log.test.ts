import { describe, expect, it } from 'vitest';
import { clockSeconds, dateOf } from '../../../src/methods/current/log/clock.ts';
import { type LogRole, previewLog } from '../../../src/methods/current/log/columns.ts';
import { LogReader, LogRefused, readLog } from '../../../src/methods/current/log/readLog.ts';
import { expectClose } from '../../tolerance.ts';

describe('times as loggers write them', () => {
  it.each([
    ['13:05:20.5', 47120.5],
    ['13:05', 47100],
    ['1:05:20 PM', 47120],
    ['12:00:01 am', 1],
    ['1764000000', 1764000000],
    ['1764000000123', 1764000000.123],
    ['100:00:00', 360000],
  ])('%s', (text, seconds) => {
    expectClose(clockSeconds(text)!, seconds, { relative: 1e-12 });
  });

  it('dates count days, whichever way round they are written', () => {
    expect(dateOf('2026-03-01')! - dateOf('2026-02-28')!).toBe(1);
    expect(dateOf('2024-03-01')! - dateOf('2024-02-28')!).toBe(2);
    expect(dateOf('31/12/2026')! - dateOf('2026-12-30')!).toBe(1);
    expect(dateOf('12/31/2026')).toBe(dateOf('31.12.2026'));
    expectClose(clockSeconds('2026-10-05T00:00:10Z')! - clockSeconds('2026-10-04 23:59:50')!, 20, { absolute: 1e-6 });
  });

  it.each(['', 'noon', '25', '12:75', 'abc 12'])('"%s" is none', (text) => {
    expect(clockSeconds(text)).toBeNull();
  });
});

const roles = (text: string) => previewLog(text)!.columns.map((c) => [c.role, c.unit] as [LogRole, string]);

describe('the preview of a log', () => {
  it('guesses columns by their names and units', () => {
    expect(
      roles(
        'Time (s),Current (A),Core °C,Jacket °C,Room °C,Drop mV\n1,120,21.0,20.5,20.1,25.1\n2,120,21.4,20.5,20.1,25.2\n',
      ),
    ).toEqual([
      ['time', 's'],
      ['current', 'A'],
      ['conductor', '°C'],
      ['surface', '°C'],
      ['ambient', '°C'],
      ['drop', 'mV'],
    ]);
  });

  it('finds the figures below a page of words, semicolons and decimal commas', () => {
    const preview = previewLog(
      'Logger 7\nSerial;42\n\nUhrzeit;Strom A;Leiter °C;Raum °C\n13:00:00;120,5;21,2;20,0\n13:00:10;120,4;22,0;20,0\n',
    )!;
    expect(preview.layout).toMatchObject({ separator: ';', decimalComma: true, headLines: 4 });
    expect(preview.columns.map((c) => c.role)).toEqual(['time', 'current', 'conductor', 'ambient']);
    expect(preview.columns[0].unit).toBe('clock');
    expect(preview.missing).toEqual([]);
  });

  it('reads quoted cells, tabs, and says what is missing', () => {
    expect(roles('"Time, min"\t"T1 (F)"\n0.5\t70\n1.0\t71\n')).toEqual([
      ['time', 'min'],
      ['conductor', '°F'],
    ]);
    expect(previewLog('a,b\n1,2\n3,4\n')!.missing).toEqual([
      'no column holds the time',
      'no column holds a temperature of the cable',
    ]);
  });

  it('of words alone is none', () => {
    expect(previewLog('nothing here\nbut words\n')).toBeNull();
  });
});

/** Reads a whole text in pieces of so many characters. */
function read(text: string, size = 7) {
  const { layout, columns } = previewLog(text)!;
  const pieces = Array.from({ length: Math.ceil(text.length / size) }, (_, i) => text.slice(i * size, (i + 1) * size));
  return readLog(pieces, layout, columns);
}

describe('a log that is read', () => {
  const text = 'Time min,Amps,Core F,Room K\r\n0,120,68,293.15\r\n1,121,,293.2\r\n2,119,86,293.1\r\n';

  it('is in SI whatever the pieces', () => {
    for (const size of [1, 5, 1000]) {
      const log = read(text, size);
      expect([...log.time]).toEqual([0, 60, 120]);
      expect([...log.current!]).toEqual([120, 121, 119]);
      expectClose(log.conductor![2], 303.15, { absolute: 1e-9 });
      expect(log.conductor![1]).toBeNaN();
      expect([...log.ambient!]).toEqual([293.15, 293.2, 293.1]);
      expect(log.step).toBe(60);
    }
  });

  it('passes midnight, and tells gaps and rows it could not read', () => {
    const rows = Array.from({ length: 40 }, (_, i) => {
      const s = 86_400 - 100 + i * 10 + (i > 20 ? 600 : 0);
      const clock = [Math.floor(s / 3600) % 24, Math.floor(s / 60) % 60, s % 60]
        .map((x) => String(x).padStart(2, '0'))
        .join(':');
      return `${i === 30 ? 'lost' : clock},${20 + i}`;
    });
    const log = read(`time,temp C\n${rows.join('\n')}`);
    expect(log.time).toHaveLength(39);
    expect(log.time[38]).toBe(990);
    expect(log.gaps).toEqual([{ from: 200, to: 810 }]);
    expect(log.unreadable).toEqual({ rows: 1, first: 31 });
  });

  it('that runs backwards is refused with its row', () => {
    expect(() => read('time s,temp C\n0,20\n10,21\n5,22\n')).toThrow(/backwards at row 3/);
  });

  it('without a time or with too little is refused', () => {
    const { layout } = previewLog(text)!;
    expect(() => new LogReader(layout, [])).toThrow(LogRefused);
    expect(
      () =>
        new LogReader(layout, [
          { index: 0, role: 'time', unit: 'weeks' },
          { index: 2, role: 'conductor', unit: '°C' },
        ]),
    ).toThrow(/weeks/);
    expect(() => read('time s,temp C\n0,20\n')).toThrow(/fewer than two/);
  });

  it('tells how far it is', () => {
    const { layout, columns } = previewLog(text)!;
    const told: number[] = [];
    readLog([text.slice(0, 40), text.slice(40)], layout, columns, ({ rows }) => told.push(rows));
    expect(told).toEqual([0, 3]);
  });
});
