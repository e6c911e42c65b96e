import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { dataFolder } from '../../../src/edge/store/place.ts';

describe('where the shelf is kept', () => {
  it.each([
    [{ CUPEL_HOME: '/my shelf' }, 'linux', '/my shelf'],
    [{}, 'linux', join('/h', '.local', 'share', 'cupel')],
    [{ XDG_DATA_HOME: '/data' }, 'linux', join('/data', 'cupel')],
    [{ XDG_DATA_HOME: 'relative' }, 'linux', join('/h', '.local', 'share', 'cupel')],
    [{}, 'darwin', join('/h', 'Library', 'Application Support', 'cupel')],
    [{ APPDATA: '/r' }, 'win32', join('/r', 'cupel')],
    [{}, 'win32', join('/h', 'AppData', 'Roaming', 'cupel')],
  ])('%j on %s', (env, platform, wanted) => {
    expect(dataFolder(env, platform, '/h')).toBe(wanted);
  });
});
