/** A bench of its own process with an empty shelf, and a Chromium to look at it, for timing what a person sees. */
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findChromium } from '../scripts/parts/chromium.mjs';
import { root } from '../scripts/runTypescript.mjs';

const CLI = join(root, 'dist', 'cli.js');
const BROWSER_ARGUMENTS = ['--no-sandbox', '--disable-gpu', '--disable-background-networking'];

/** What stands in the way of timing the page; null when nothing does. */
export function cannotTime() {
  if (!existsSync(CLI)) return 'not measured, dist/cli.js is missing (npm run build)';
  return findChromium() === null ? 'not measured, no Chromium was found' : null;
}

/** Sends entries to a bench's shelf. */
export async function putOnShelf(address, trial, entries) {
  const MOST = 1000;
  for (let from = 0; from < entries.length; from += MOST) {
    const body = JSON.stringify({ trial, entries: entries.slice(from, from + MOST) });
    const headers = { 'content-type': 'application/json' };
    const answer = await fetch(`${address}/api/entries`, { method: 'POST', headers, body });
    if (!answer.ok) throw new Error(`the bench answered ${answer.status}: ${await answer.text()}`);
  }
}

/** Runs `work` with the bench's address and a browser; ends both, and forgets the shelf. */
export async function inBrowser(startedBench, work) {
  const { chromium } = await import('playwright-core');
  const home = await mkdtemp(join(tmpdir(), 'cupel-bench-'));
  const bench = await startedBench(CLI, ['--port', '0', '--no-open'], { home });
  try {
    const browser = await chromium.launch({ executablePath: findChromium(), args: BROWSER_ARGUMENTS });
    try {
      return await work(bench.address, browser);
    } finally {
      await browser.close();
    }
  } finally {
    bench.child.kill('SIGTERM');
    await bench.ended;
    await rm(home, { recursive: true, force: true });
  }
}

/** `median 21 ms, 95 % within 30, 99 % within 34` of a list of milliseconds. */
export function spreadWords(times) {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))].toFixed(0);
  return `median ${at(0.5)} ms, 95 % within ${at(0.95)}, 99 % within ${at(0.99)}`;
}
