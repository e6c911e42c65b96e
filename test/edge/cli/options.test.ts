import { describe, expect, it } from 'vitest';
import { EXIT, type Failure } from '../../../src/edge/cli/failure.ts';
import { browserCommand, wantsBrowser } from '../../../src/edge/cli/openBrowser.ts';
import { readDraws, readLevel, readPort, readUnits } from '../../../src/edge/cli/options.ts';
import { program, withBenchFirst } from '../../../src/edge/cli/program.ts';

function failureOf(act: () => unknown): Failure | null {
  try {
    act();
    return null;
  } catch (error) {
    return error as Failure;
  }
}

describe('options as typed', () => {
  it.each([
    ['0.95', 0.95],
    ['95%', 0.95],
    ['.99', 0.99],
    ['99.9 %', 0.999],
  ])('--level %s', (text, level) => expect(readLevel(text)).toBeCloseTo(level, 12));

  it.each(['', ' ', '95', '0.3', '1', 'high', 'NaN', '-0.95', '0,95'])('--level "%s" is refused', (text) => {
    expect(failureOf(() => readLevel(text))?.code).toBe(EXIT.wrongUse);
    expect(failureOf(() => readLevel(text))?.message).toContain(`"${text}"`);
  });

  it.each([
    ['auto', 'auto'],
    ['0', 0],
    ['200000', 200000],
  ])('--draws %s', (text, draws) => expect(readDraws(text)).toBe(draws));
  it.each(['', '-1', '1e6', '1.5', 'many', '999999999999', 'Infinity'])('--draws "%s" is refused', (text) => {
    expect(failureOf(() => readDraws(text))?.code).toBe(EXIT.wrongUse);
  });

  it.each(['0', '4870', '65535'])('--port %s', (text) => expect(readPort(text)).toBe(Number(text)));
  it.each(['', '65536', '-1', 'http', '80.5'])('--port "%s" is refused', (text) => {
    expect(failureOf(() => readPort(text))?.code).toBe(EXIT.wrongUse);
  });
});

describe('units of the table', () => {
  it.each([
    ['awg', { area: 'awg' }],
    ['AWG, in,ft', { area: 'awg', length: 'in', perLength: 'ft' }],
  ])('--units %s', (text, units) => expect(readUnits(text)).toEqual(units));
  it.each(['', 'kg', 'awg,', 'awg,mm2', 'constructor', 'mm mm2'])('--units "%s" is refused', (text) => {
    expect(failureOf(() => readUnits(text))?.code).toBe(EXIT.wrongUse);
  });
});

describe('an option by another word', () => {
  it.each([
    ['--volts', '--supply'],
    ['--voltage=12', '--supply'],
    ['--amps', '--load'],
    ['--lenth', '--length'],
  ])('cupel run %s means %s', (typed, meant) => {
    const args = ['run', 'x', '--load', '80A', '--length', '4m', typed, '12'];
    const said = failureOf(() => program('0').parse(args, { from: 'user' }));
    expect(said?.code).toBe(EXIT.wrongUse);
    expect(said?.message).toBe(`Unknown option '${typed}'. Did you mean ${meant}? See cupel run --help.`);
  });

  it('is a word of its own command alone', () => {
    const said = failureOf(() => program('0').parse(['assay', 'x', '--volts'], { from: 'user' }));
    expect(said?.message).not.toContain('--supply');
    expect(said?.message).toContain("Unknown option '--volts'.");
  });
});

describe('without a command', () => {
  it.each([
    [[], ['bench']],
    [['--no-open'], ['bench', '--no-open']],
    [['--help'], ['--help']],
    [['-V'], ['-V']],
    [
      ['assay', 'x'],
      ['assay', 'x'],
    ],
  ])('%j means %j', (typed, meant) => expect(withBenchFirst(typed)).toEqual(meant));
});

describe('the browser', () => {
  it.each([
    [{ DISPLAY: ':0' }, 'linux', true],
    [{ WAYLAND_DISPLAY: 'wayland-0' }, 'linux', true],
    [{}, 'linux', false],
    [{}, 'darwin', true],
    [{}, 'win32', true],
    [{ CI: 'true', DISPLAY: ':0' }, 'linux', false],
    [{ CI: '1' }, 'win32', false],
    [{ SSH_CONNECTION: 'x', DISPLAY: ':0' }, 'linux', false],
    [{ SSH_TTY: 'x' }, 'darwin', false],
  ])('with %j on %s: %s', (env, platform, wanted) => expect(wantsBrowser(env, platform)).toBe(wanted));

  it('is opened by a program that needs no shell', () => {
    for (const platform of ['linux', 'darwin', 'win32']) {
      const [program, args] = browserCommand('http://127.0.0.1:4870', platform);
      expect(program).not.toMatch(/sh$|cmd/);
      expect(args.at(-1)).toBe('http://127.0.0.1:4870');
    }
  });
});
