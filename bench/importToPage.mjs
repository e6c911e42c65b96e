/**
 * From letting go of a package over the shelf to its findings painted at Inside, the link to them pressed as soon as it is
 * there. In a real Chromium, on a bench of its own process, the page open but Inside not visited before.
 *
 *     node bench/importToPage.mjs
 */
import { importTypescript } from '../scripts/runTypescript.mjs';
import { cannotTime, inBrowser, spreadWords } from './inBrowser.mjs';

const CABLES = 12;
const RUNS = 9;
/** Milliseconds; the aim that the design sets. */
const AIM = 1000;

/** Runs inside the page: drops the files, follows the link, and answers when the drawn cables stand painted, ms. */
function dropAndLook(files) {
  const transfer = new DataTransfer();
  for (const [name, text] of files) transfer.items.add(new File([text], name));
  return new Promise((settle) => {
    const from = performance.now();
    let followed = false;
    const watch = new MutationObserver(() => {
      const link = document.querySelector('.intake a');
      if (link !== null && !followed) {
        followed = true;
        link.click();
      }
      if (document.querySelector('.faces li') === null) return;
      watch.disconnect();
      // What is posted from within a frame is heard after that frame is painted.
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => settle(performance.now() - from);
        channel.port2.postMessage('');
      });
    });
    watch.observe(document.body, { subtree: true, childList: true });
    dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true }));
  });
}

export async function importToPageSpeed() {
  const trouble = cannotTime();
  if (trouble !== null) return `package dropped to findings painted: ${trouble}`;
  const { packageOf, startedBench } = await importTypescript('bench/pageCase.ts');
  const { files, readings } = packageOf(CABLES);
  return inBrowser(startedBench, async (address, browser) => {
    const times = [];
    for (let run = 0; run < RUNS; run += 1) {
      // Another name each time, so that nothing of it is on the shelf yet.
      const own = [...files].map(([name, text]) => [name, text.replaceAll('lot-A', `lot-${run}`)]);
      const page = await browser.newPage({ viewport: { width: 1440, height: 1000 } });
      await page.goto(address);
      await page.locator('.bring-in').waitFor();
      await page.waitForLoadState('networkidle');
      times.push(await page.evaluate(dropAndLook, own));
      await page.close();
    }
    return `package dropped to findings painted, ${CABLES} cables, ${readings} readings, ${RUNS} times: ${spreadWords(times)} (aim ${AIM})`;
  });
}

if (process.argv[1] === import.meta.filename) console.log(await importToPageSpeed());
