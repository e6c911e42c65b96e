import type { NetworkInterfaceInfo } from 'node:os';
import { describe, expect, it } from 'vitest';
import { localAddresses } from '../../../../src/edge/server/share/localAddresses.ts';
import { qrModules, qrText } from '../../../../src/edge/server/share/qr.ts';

describe('a QR code', () => {
  const modules = qrModules('http://192.168.7.1:4870/pair#K7M3QX');

  it('is square, with its three finder patterns', () => {
    // ISO/IEC 18004:2015, §6.3.3: 7 × 7 modules dark at the rim, then a light ring, then 3 × 3 dark.
    const finder = ['1111111', '1000001', '1011101', '1011101', '1011101', '1000001', '1111111'];
    const size = modules.length;
    // §5.3.1: 21 modules for version 1 and four more for each version.
    expect((size - 17) % 4).toBe(0);
    for (const [top, left] of [
      [0, 0],
      [0, size - 7],
      [size - 7, 0],
    ] as const)
      expect(
        modules.slice(top, top + 7).map((row) =>
          row
            .slice(left, left + 7)
            .map(Number)
            .join(''),
        ),
      ).toEqual(finder);
  });

  it('is drawn in a terminal with a light border of four modules all round', () => {
    const lines = qrText(modules)
      .trimEnd()
      .split('\n')
      .map((line) => line.slice('\x1b[30;107m'.length, -'\x1b[0m'.length));
    expect(lines).toHaveLength(Math.ceil((modules.length + 8) / 2));
    expect(new Set(lines.map((line) => line.length))).toEqual(new Set([modules.length + 8]));
    expect([lines[0]?.trim(), lines[1]?.trim(), lines.at(-1)?.trim()]).toEqual(['', '', '']);
    const halves = { ' ': [0, 0], '▀': [1, 0], '▄': [0, 1], '█': [1, 1] } as Record<string, [number, number]>;
    const drawn = lines.flatMap((line) => [0, 1].map((half) => [...line].map((letter) => halves[letter]?.[half])));
    const inner = drawn.slice(4, 4 + modules.length).map((row) => row.slice(4, 4 + modules.length));
    expect(inner).toEqual(modules.map((row) => row.map(Number)));
  });
});

describe('addresses on the local network', () => {
  const at = (address: string, more: object = {}) =>
    ({ address, family: 'IPv4', internal: false, ...more }) as NetworkInterfaceInfo;

  it('are those that a phone may reach, the likeliest first', () => {
    const interfaces = {
      lo: [at('127.0.0.1', { internal: true })],
      eth0: [at('203.0.113.7'), at('fe80::1', { family: 'IPv6' })],
      wlan0: [at('192.168.1.20'), at('169.254.3.4')],
      tun0: [at('10.8.0.2'), at('172.20.0.9')],
      docker0: [at('172.17.0.1')],
    };
    expect(localAddresses(interfaces)).toEqual(['192.168.1.20', '10.8.0.2', '172.20.0.9', '203.0.113.7']);
    expect(localAddresses({})).toEqual([]);
  });
});
