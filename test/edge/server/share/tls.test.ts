import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { get } from 'node:https';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { listenAt } from '../../../../src/edge/server/listen.ts';
import { readTls, TlsRefusal } from '../../../../src/edge/server/share/tls.ts';
import { PROJECT_ROOT } from '../../../support/sourceFiles.ts';
import { tempFolder } from '../../../support/tempFolder.ts';
import { benchOn, smallPage } from '../bench.ts';

const folder = tempFolder();
const page = smallPage(folder);
const at = (name: string) => join(folder, name);

/** The command that the document tells, for another address. */
function documentedCommand(address: string): string {
  const text = readFileSync(join(PROJECT_ROOT, 'docs', 'add-a-phone.md'), 'utf8');
  const command = /```sh\n(openssl .+)\n```/.exec(text)?.[1] ?? '';
  expect(command).toContain('IP:192.168.1.20');
  return command.replace('192.168.1.20', address);
}

/** Runs it as a shell would, without one: the words between quotes stay together. */
function run(command: string, cwd: string): void {
  const [program = '', ...words] = [...command.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2] ?? '');
  execFileSync(program, words, { cwd, stdio: 'pipe' });
}

beforeAll(() => {
  run(documentedCommand('127.0.0.1'), folder);
  mkdirSync(at('other'));
  run(documentedCommand('127.0.0.1'), at('other'));
});

function status(address: string, ca: string): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    get(`${address}/`, { ca, agent: false }, (answer) => {
      answer.resume();
      resolve(answer.statusCode);
    }).on('error', reject);
  });
}

describe('a certificate made as the document says', () => {
  it('serves the page to whoever trusts it, and to nobody else', async () => {
    let port = 0;
    const bench = await listenAt(
      benchOn(page, undefined, { port: () => port }),
      '127.0.0.1',
      0,
      readTls(at('bench.crt'), at('bench.key')),
    );
    port = bench.port;
    try {
      expect(bench.address).toBe(`https://127.0.0.1:${port}`);
      expect(await status(bench.address, readFileSync(at('bench.crt'), 'utf8'))).toBe(200);
      await expect(status(bench.address, readFileSync(at('other/bench.crt'), 'utf8'))).rejects.toThrow(
        /self-signed|signature/i,
      );
      await expect(fetch(bench.address.replace('https', 'http'))).rejects.toThrow();
    } finally {
      await bench.stop();
    }
  });
});

describe('what is no certificate', () => {
  it.each([
    ['no file', 'nowhere.crt', 'bench.key', 'could not be read'],
    ['no key', 'bench.crt', 'nowhere.key', 'could not be read'],
    ['something else', 'words.txt', 'bench.key', 'are not a certificate and its key'],
    ['a key of another one', 'bench.crt', join('other', 'bench.key'), 'are not a certificate and its key'],
    ['the two the wrong way round', 'bench.key', 'bench.crt', 'are not a certificate and its key'],
  ])('%s', (_what, cert, key, sentence) => {
    writeFileSync(at('words.txt'), 'some words');
    expect(() => readTls(at(cert), at(key))).toThrow(TlsRefusal);
    expect(() => readTls(at(cert), at(key))).toThrow(sentence);
  });
});
