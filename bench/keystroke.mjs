/**
 * From the key to the picture: how long after Enter the finding so far that counts the new reading stands painted, in a
 * trial of twelve cables with sixty readings each. In a real Chromium, on a bench of its own process.
 *
 *     node bench/keystroke.mjs
 */
import { importTypescript } from '../scripts/runTypescript.mjs';
import { cannotTime, inBrowser, putOnShelf, spreadWords } from './inBrowser.mjs';

const CABLES = 12;
const TYPED = 60;
/** A person needs longer than this for the next reading, ms. */
const PAUSE = 150;
/** Milliseconds; the aim that the design sets. */
const AIM = 50;

/**
 * Runs inside the page: notes when Enter went down, and the frame in which the finding that counts it was painted. The
 * finding names the newest entry that it counts, so that a figure whose digits stay is not waited for in vain.
 */
function watch() {
  const soFar = () => document.querySelector('.area-so-far')?.getAttribute('data-counts') ?? '';
  globalThis.times = [];
  let pressed = null;
  let before = '';
  addEventListener(
    'keydown',
    (event) => {
      if (event.key === 'Enter') [pressed, before] = [event.timeStamp, soFar()];
    },
    { capture: true },
  );
  const painted = () => {
    if (pressed === null || soFar() === before) return;
    const from = pressed;
    pressed = null;
    // What is posted from within a frame is heard after that frame is painted.
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => globalThis.times.push(performance.now() - from);
      channel.port2.postMessage('');
    });
  };
  new MutationObserver(painted).observe(document.body, { subtree: true, childList: true, attributes: true });
}

export async function keystrokeSpeed() {
  const trouble = cannotTime();
  if (trouble !== null) return `Enter to painted finding: ${trouble}`;
  const { halfReadTrial, readsOf, startedBench } = await importTypescript('bench/pageCase.ts');
  const { trial, entries, readings } = halfReadTrial(CABLES, TYPED);
  return inBrowser(startedBench, async (address, browser) => {
    await putOnShelf(address, trial, entries);
    const page = await browser.newPage({ viewport: { width: 1440, height: 1000 } });
    await page.goto(`${address}/trial/${trial}/bench`);
    await page.locator('.kept-where[data-state=there]').waitFor();
    await page.locator('.area-so-far .figure').first().waitFor();
    await page.evaluate(watch);
    for (let n = 0; n < TYPED; n += 1) {
      const head = await page.locator('.in-hand .what').textContent();
      await page.keyboard.type(readsOf(head, n));
      await page.keyboard.press('Enter');
      await page.waitForFunction((done) => globalThis.times.length > done, n);
      await page.waitForTimeout(PAUSE);
    }
    const times = await page.evaluate(() => globalThis.times);
    return `Enter to painted finding, ${CABLES} cables, ${readings} readings, ${TYPED} typed: ${spreadWords(times)} (aim ${AIM})`;
  });
}

if (process.argv[1] === import.meta.filename) console.log(await keystrokeSpeed());
