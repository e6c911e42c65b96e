import { describe, expect, it } from 'vitest';
import { jacketOpened, openedText } from '../../../src/edge/page/store/jacket/jacketAddress.ts';
import {
  addStrokes,
  atStop,
  clockAmount,
  elapsed,
  forNextPiece,
  freshRun,
  lookAt,
  type Run,
  readRun,
  strokes,
  takeBackStroke,
  toggleClock,
} from '../../../src/edge/page/store/jacket/runState.ts';
import { PROTOCOLS, protocolOf } from '../../../src/methods/jacket/protocols/protocols.ts';

const run = (part: Partial<Run> = {}): Run => ({ ...freshRun(protocolOf('scrape')), begun: true, ...part });

describe('a test as it is set up', () => {
  it.each([
    ['scrape', 'strokes', 'strokes', ''],
    ['sandpaper', 'strokes', 'strokes', ''],
    ['cut-through', 'typed', 'N', ''],
    ['pinch', 'typed', 'N', ''],
    ['hot iron', 'timer', 's', ''],
    ['cold bend', 'once', 'bends', '1'],
    ['heat ageing', 'once', 'h', ''],
    ['fluid', 'once', 'h', ''],
  ])('%s goes by %s in %s', (name, way, unit, exposure) => {
    expect(freshRun(PROTOCOLS.find((p) => p.name === name)!)).toMatchObject({ test: name, way, unit, exposure });
  });

  it('is a blank one where it is one’s own', () => {
    expect(freshRun(null)).toMatchObject({ test: '', way: 'strokes', begun: false });
  });
});

describe('strokes', () => {
  it('add up and are taken back tap by tap, not below none', () => {
    let now = addStrokes(addStrokes(addStrokes(run(), 1), 10), 1);
    expect(strokes(now)).toBe(12);
    now = takeBackStroke(takeBackStroke(now));
    expect(strokes(now)).toBe(1);
    expect(strokes(takeBackStroke(takeBackStroke(takeBackStroke(now))))).toBe(0);
  });

  it('stay exact beyond what is held tap by tap', () => {
    let now = run();
    for (let i = 0; i < 1234; i++) now = addStrokes(now, 1);
    expect(strokes(now)).toBe(1234);
    expect(now.steps.length).toBe(100);
    expect(strokes(takeBackStroke(now))).toBe(1233);
  });

  it.each([
    ['50', 49, 1, 50],
    ['50', 45, 10, 50],
    ['50', 50, 1, null],
    ['', 49, 1, null],
    ['0', 49, 1, null],
  ])('looked at every “%s”: from %d by %d calls %s', (every, before, by, look) => {
    expect(lookAt(addStrokes(run({ every, counted: before }), by), before)).toBe(look);
  });

  it.each([
    ['500', 499, false],
    ['500', 500, true],
    ['', 9999, false],
    ['12,5', 12.5, true],
  ])('ended at “%s”, %d: %s', (stopAt, amount, ended) => {
    expect(atStop(run({ stopAt }), amount)).toBe(ended);
  });
});

describe('the clock', () => {
  it('runs on over a reload and can be halted', () => {
    const started = toggleClock(run({ way: 'timer', unit: 's' }), 1000);
    const reloaded = readRun(JSON.stringify(started))!;
    expect(clockAmount(reloaded, 13_340)).toBe(12.3);
    const halted = toggleClock(reloaded, 13_340);
    expect(elapsed(halted, 99_999)).toBe(12_340);
    expect(elapsed(toggleClock(halted, 20_000), 21_000)).toBe(13_340);
  });

  it('counts hours in hundredths, and never runs backwards', () => {
    const started = toggleClock(run({ way: 'once', unit: 'h' }), 0);
    expect(clockAmount({ ...started, startedAt: 1 }, 1 + 5_400_000)).toBe(1.5);
    expect(elapsed({ ...started, startedAt: 5000 }, 4000)).toBe(0);
  });
});

describe('the next piece', () => {
  it('begins at nothing, but an exposure of all pieces runs on', () => {
    const counted = addStrokes(run({ specimen: 'x' }), 10);
    expect(forNextPiece(counted)).toMatchObject({ specimen: '', steps: [], counted: 0 });
    expect(forNextPiece(run({ way: 'once', startedAt: 77 })).startedAt).toBe(77);
  });
});

describe('what was kept', () => {
  it('comes back whole', () => {
    const now = addStrokes(run({ specimen: 'a', every: '10' }), 10);
    expect(readRun(JSON.stringify(now))).toEqual(now);
  });

  it.each([
    undefined,
    '',
    'x{',
    '[]',
    '5',
    '{"test":"scrape"}',
    JSON.stringify({ ...run(), steps: ['1'] }),
    JSON.stringify({ ...run(), way: 'burn' }),
  ])('%s is no run', (text) => {
    expect(readRun(text)).toBeNull();
  });
});

describe('the address', () => {
  it.each([
    [null, { what: 'nothing' }],
    ['run', { what: 'run' }],
    ['quill', { what: 'cable', cable: 'quill' }],
    ['cable:run', { what: 'cable', cable: 'run' }],
    ['cable:cable:x', { what: 'cable', cable: 'cable:x' }],
  ] as const)('%s opens %j, and back', (text, opened) => {
    expect(jacketOpened(text)).toEqual(opened);
    expect(openedText(opened)).toBe(text);
  });
});
