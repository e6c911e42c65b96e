/**
 * Takes the pictures of the page that the README shows, from the invented trial on a shelf of its own.
 *
 *     node scripts/pictures.mjs
 *     node scripts/pictures.mjs --into some/folder
 */
import { spawn } from 'node:child_process';
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import { findChromium } from './parts/chromium.mjs';
import { inProject, stopWith } from './parts/root.mjs';
import { setUp } from './parts/setUp.mjs';

const PLAN = '/trial/fenwater-2-awg/plan';
const BENCH = '/trial/fenwater-2-awg/bench';
const INSIDE = '/trial/fenwater-2-awg/inside';
const BEND = '/trial/fenwater-2-awg/bend#quill';
const JACKET = '/trial/fenwater-2-awg/jacket';
const STANDING = '/trial/fenwater-2-awg/standing';
const AMPS = '/trial/fenwater-2-awg/amps#brackenfell';
const RUN = '/trial/fenwater-2-awg/amps#run';
const PUBLISH = '/trial/fenwater-2-awg/publish';
const DESK = { width: 1440, height: 1000 };
/** Down to the order of the first test. */
const TALL = { width: 1440, height: 1690 };
/** Down to the last row of the run's table. */
const RUN_TALL = { width: 1440, height: 2230 };
/** Down to the report. */
const PUBLISH_TALL = { width: 1440, height: 2010 };
const PHONE = { width: 390, height: 844 };

/** The cable that the six fields on the shelf ask about; invented. */
const CABLE = {
  label: '2 AWG OFC',
  mass: '95.6 g',
  length: '300 mm',
  ohms: '0.76 mohm',
  contacts: '1500 mm',
  temperature: '20 C',
};

const PICTURES = [
  { file: 'shelf.png', path: '/', viewport: DESK, colorScheme: 'light', wholePage: true, before: fillFields },
  { file: 'plan.png', path: PLAN, viewport: DESK, colorScheme: 'light', before: waitForPlan },
  { file: 'bench.png', path: BENCH, viewport: DESK, colorScheme: 'light', before: waitForBench },
  { file: 'bench-phone.png', path: BENCH, viewport: PHONE, colorScheme: 'dark', sharp: true, before: waitForBench },
  { file: 'inside-light.png', path: INSIDE, viewport: DESK, colorScheme: 'light', before: waitForDraws },
  { file: 'inside-dark.png', path: INSIDE, viewport: DESK, colorScheme: 'dark', before: waitForDraws },
  { file: 'phone.png', path: INSIDE, viewport: PHONE, colorScheme: 'light', sharp: true, before: waitForDraws },
  { file: 'bend.png', path: BEND, viewport: DESK, colorScheme: 'light', wholePage: true, before: waitForSheet },
  { file: 'jacket.png', path: JACKET, viewport: TALL, colorScheme: 'light', before: waitForTests },
  { file: 'amps.png', path: AMPS, viewport: DESK, colorScheme: 'light', wholePage: true, before: waitForHeating },
  { file: 'run-check.png', path: RUN, viewport: RUN_TALL, colorScheme: 'light', before: waitForRun },
  { file: 'standing.png', path: STANDING, viewport: DESK, colorScheme: 'light', before: waitForOrder },
  { file: 'publish.png', path: PUBLISH, viewport: PUBLISH_TALL, colorScheme: 'light', before: waitForCard },
];

const { values } = parseArgs({ options: { into: { type: 'string', default: inProject('docs', 'pictures') } } });
const into = resolve(values.into);

await setUp();
const executablePath = findChromium();
if (executablePath === null) stopWith('No Chromium was found; name one in CHROME_PATH.');
const { chromium } = await import('playwright-core');
const home = await mkdtemp(join(tmpdir(), 'cupel-pictures-'));
const bench = spawn(process.execPath, [inProject('dist', 'cli.js'), 'bench', '--no-open', '--port', '0'], {
  env: { ...process.env, CUPEL_HOME: home, DATABASE_URL: '' },
  stdio: ['ignore', 'pipe', 'inherit'],
});
const benchEnded = new Promise((settle) => bench.once('exit', settle));
try {
  const address = await addressOf(bench);
  await mkdir(into, { recursive: true });
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  for (const picture of PICTURES) {
    await take(browser, address, picture);
    console.log(picture.file);
  }
  await browser.close();
} finally {
  bench.kill();
  await benchEnded;
  await rm(home, { recursive: true, force: true });
}

/** The address that the bench tells in its first line. */
async function addressOf(child) {
  for await (const line of createInterface({ input: child.stdout })) {
    const address = /^Cupel is at (\S+)/.exec(line)?.[1];
    if (address !== undefined) return address.replace(/\/$/, '');
  }
  return stopWith('The bench ended before it told its address.');
}

async function take(browser, address, { file, path, viewport, colorScheme, wholePage, sharp, before }) {
  const context = await browser.newContext({
    viewport,
    colorScheme,
    reducedMotion: 'reduce',
    deviceScaleFactor: sharp ? 2 : 1,
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.goto(`${address}${path}`);
  await before(page);
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: join(into, file), fullPage: wholePage === true });
  await context.close();
}

async function fillFields(page) {
  for (const [name, text] of Object.entries(CABLE)) await page.locator(`#six-${name}`).fill(text);
  await page.locator('.six .answer[aria-busy=false] .key').waitFor();
  await page.evaluate(() => document.activeElement?.blur());
}

async function waitForPlan(page) {
  await page.locator('.look-ahead[aria-busy=false] .hundreds').waitFor({ timeout: 120_000 });
}

async function waitForBench(page) {
  await page.getByRole('button', { name: /^Record/ }).waitFor({ timeout: 60_000 });
}

async function waitForDraws(page) {
  await page.locator('.held').waitFor({ timeout: 120_000 });
}

async function waitForTests(page) {
  await page.locator('.jacket-test svg').first().waitFor({ timeout: 120_000 });
}

async function waitForOrder(page) {
  const atRest = () => /100\s000 joint draws/.test(document.querySelector('.standing-resting')?.textContent ?? '');
  await page.waitForFunction(atRest, null, { timeout: 120_000 });
  await page.locator('.places-table .face svg').first().waitFor({ timeout: 120_000 });
}

async function waitForHeating(page) {
  await page.locator('.heatings svg').first().waitFor({ timeout: 120_000 });
  await page.evaluate(() => scrollTo(0, 0));
}

async function waitForRun(page) {
  await page.locator('.run-check[data-ready=yes] .run-table').waitFor({ timeout: 120_000 });
}

async function waitForCard(page) {
  await page.locator('.card-frame svg').waitFor({ timeout: 120_000 });
}

async function waitForSheet(page) {
  await page.locator('.bend-sheet svg').first().waitFor({ timeout: 60_000 });
  // The open sheet comes into sight by itself; the picture begins at the top.
  await page.evaluate(() => scrollTo(0, 0));
}
