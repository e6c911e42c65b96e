/**
 * A shelf of ten thousand cables in a real Chromium: how long a key in the search field takes until the list that follows it is
 * painted, and how evenly the list scrolls.
 *
 *     node bench/shelf.mjs
 */
import { importTypescript } from '../scripts/runTypescript.mjs';
import { cannotTime, inBrowser, spreadWords } from './inBrowser.mjs';

const CABLES = 10_000;
/** Milliseconds from a key to the painted list; the aim that was set. */
const AIM = 100;
/** What is typed and taken away again, so that the list is long, short and long. */
const WORDS = ['alder', 'birch cord', '2 awg', 'trial 12', 'zzz', 'l7 house', 'falls short'];
/** How long the list is scrolled, ms, and how far in a frame, px: about a page and a half each second. */
const SCROLLED_MS = 4000;
const STEP = 24;

/** Runs inside the page: notes every key in a field and the frame in which what follows from it was painted. */
function watch() {
  globalThis.times = [];
  addEventListener(
    'input',
    (event) => {
      const from = event.timeStamp;
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => globalThis.times.push(performance.now() - from);
        channel.port2.postMessage('');
      });
    },
    { capture: true },
  );
}

/** Runs inside the page: scrolls the list a step in each frame, and gives the time between frames. */
function scrollThrough({ ms, step }) {
  // A step of nothing tells how many frames this machine paints anyway.
  const list = document.querySelector('.window');
  return new Promise((resolve) => {
    const frames = [];
    let last = null;
    const start = performance.now();
    const frame = (now) => {
      if (last !== null) frames.push(now - last);
      last = now;
      list.scrollTop += step;
      if (now - start < ms) requestAnimationFrame(frame);
      else resolve(frames);
    };
    requestAnimationFrame(frame);
  });
}

/** A frame later than this missed one painting of a screen of 60 Hz, ms. */
const LATE_MS = 25;

function rate(frames) {
  const perSecond = (1000 * frames.length) / frames.reduce((sum, ms) => sum + ms, 0);
  const late = frames.filter((ms) => ms > LATE_MS).length;
  return `${perSecond.toFixed(1)} frames a second, ${late} of ${frames.length} late`;
}

/** Milliseconds that the page's main thread has computed, whatever else the machine does meanwhile. */
async function mainThreadOf(page) {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await devtools.send('Performance.getMetrics');
    return 1000 * metrics.find(({ name }) => name === 'TaskDuration').value;
  };
}

export async function shelfSpeed() {
  const trouble = cannotTime();
  if (trouble !== null) return `Shelf of ${CABLES} cables: ${trouble}`;
  const { manyLines, startedBench } = await importTypescript('bench/shelfCase.ts');
  return inBrowser(startedBench, async (address, browser) => {
    const page = await browser.newPage({ viewport: { width: 1440, height: 1000 }, serviceWorkers: 'block' });
    await page.route('**/api/cables', (route) => route.fulfill({ json: manyLines(CABLES) }));
    await page.goto(`${address}/cables`);
    await page.getByText(`${CABLES.toLocaleString('en')} cables`, { exact: true }).waitFor();
    await page.evaluate(watch);
    const worked = await mainThreadOf(page);
    const computed = [];
    const field = page.locator('#find-words');
    const change = async (act) => {
      const before = await worked();
      const done = await page.evaluate(() => globalThis.times.length);
      await act();
      await page.waitForFunction((n) => globalThis.times.length > n, done);
      computed.push((await worked()) - before);
    };
    for (const words of WORDS) {
      for (const key of words) await change(() => field.press(key === ' ' ? 'Space' : key));
      await change(() => field.fill(''));
    }
    const times = await page.evaluate(() => globalThis.times);
    const before = await worked();
    const frames = await page.evaluate(scrollThrough, { ms: SCROLLED_MS, step: STEP });
    const perFrame = ((await worked()) - before) / frames.length;
    const atRest = await page.evaluate(scrollThrough, { ms: SCROLLED_MS / 2, step: 0 });
    return [
      `Key to painted list, ${CABLES} cables, ${times.length} keys: ${spreadWords(times)} (aim ${AIM}); of the main thread's time: ${spreadWords(computed)}`,
      `Scrolling ${CABLES} cables: ${rate(frames)} (aim 60), ${perFrame.toFixed(1)} ms of the main thread's time each; the same page at rest: ${rate(atRest)}`,
    ].join('\n');
  });
}

if (process.argv[1] === import.meta.filename) console.log(await shelfSpeed());
