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
    for (const words of WORDS) {
      await page.locator('#find-words').pressSequentially(words, { delay: 60 });
      await page.locator('#find-words').fill('');
    }
    const times = await page.evaluate(() => globalThis.times);
    const frames = await page.evaluate(scrollThrough, { ms: SCROLLED_MS, step: STEP });
    const perSecond = (1000 * frames.length) / frames.reduce((sum, ms) => sum + ms, 0);
    const late = frames.filter((ms) => ms > 25).length;
    return [
      `Key to painted list, ${CABLES} cables, ${times.length} keys: ${spreadWords(times)} (aim ${AIM})`,
      `Scrolling ${CABLES} cables: ${perSecond.toFixed(1)} frames a second over ${frames.length} frames, ${late} of them late (aim 60)`,
    ].join('\n');
  });
}

if (process.argv[1] === import.meta.filename) console.log(await shelfSpeed());
