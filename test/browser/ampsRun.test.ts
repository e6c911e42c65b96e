import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, startBench } from './support/bench.ts';

const DEMO = '/trial/fenwater-2-awg/amps';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const tooWide = (page: Page, width: number) => page.evaluate((w) => document.documentElement.scrollWidth - w, width);
const answer = (page: Page, name: string) => page.locator(`[data-answer="${name}"]`);
const worked = (page: Page) => page.locator('.run-check[data-ready=yes]').waitFor({ timeout: 90_000 });
const heading = async (page: Page) => (await page.locator('h1').textContent())?.replaceAll('\u00a0', ' ') ?? '';

describe('a run', () => {
  it('answers as it is typed, by keyboard, and keeps its answers over a reload', async () => {
    const { page, troubles } = await bench.open(`${DEMO}#run`);
    await worked(page);
    const before = await heading(page);
    expect(before).toContain('The least nominal copper size that does is');
    await answer(page, 'steady').focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('20');
    await page.waitForFunction((was) => document.querySelector('h1')?.textContent !== was, before);
    expect(await heading(page)).toMatch(/meet volts and heat with one run/);
    await page.locator('[data-slider=length]').focus();
    await page.keyboard.press('ArrowRight');
    expect(await answer(page, 'length').inputValue()).toBe('4.1');
    expect(await page.locator('.asked').textContent()).toContain('4.1\u00a0m out');
    await page.reload();
    await worked(page);
    expect(await answer(page, 'steady').inputValue()).toBe('20');
    expect(await answer(page, 'length').inputValue()).toBe('4.1');
    const text = (await page.locator('main').textContent()) ?? '';
    expect(text).toContain('fuse at the source by the rule you work under');
    expect(text).not.toMatch(/\bsafe\b|approved/i);
    expect(troubles).toEqual([]);
  });

  it('names what it refuses, and says where nothing does', async () => {
    const { page } = await bench.open(`${DEMO}#run`);
    await worked(page);
    await answer(page, 'source').selectOption('mains');
    expect(await heading(page)).toContain('The supply is fed from the mains; expected is direct current');
    expect(await page.locator('.run-table').count()).toBe(0);
    await answer(page, 'source').selectOption('battery');
    await answer(page, 'resting').fill('72');
    expect(await heading(page)).toMatch(
      /^The supply has 72 V at rest; expected is direct current of at most 60 V, because above that a shock/,
    );
    await answer(page, 'resting').fill('12.6');
    await answer(page, 'length').fill('-3');
    expect(await heading(page)).toContain('a length above zero is needed');
    await answer(page, 'length').fill('four');
    expect(await heading(page)).toContain('The length is "four"; a number was expected.');
    await answer(page, 'length').fill('4');
    await answer(page, 'steady').fill('0');
    expect(await heading(page)).toContain('The load is 0');
    await answer(page, 'steady').fill('390');
    expect(await heading(page)).toContain('None of the measured cables');
    await page
      .locator('.run-fuses')
      .first()
      .getByText(/no fuse/i)
      .first()
      .waitFor();
    await answer(page, 'charging').fill('');
    await answer(page, 'resting').fill('12');
    await answer(page, 'steady').fill('2000 W');
    const first = page.locator('.run-table tbody tr').first();
    await first.getByText('or not fed').first().waitFor();
    expect(await first.locator('.run-settled').textContent()).toBe('falls short on bothmay not feed it');
    await page
      .getByText(/6 side by side: at the far end of the doubts they lose/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Start over' }).click();
    expect(await answer(page, 'steady').inputValue()).toBe('80');
  });

  it('goes by touch at 390 px, "I do not know" being an answer, and takes a pasted load', async () => {
    const context = await bench.browser.newContext({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    const page = await context.newPage();
    await page.goto(`${bench.address}${DEMO}#run`);
    await worked(page);
    await page.getByText('Supply, surroundings, what may be lost').tap();
    await page.getByRole('button', { name: 'I do not know: Charging' }).tap();
    expect(await answer(page, 'charging').inputValue()).toBe('');
    expect(await page.locator('.asked').textContent()).not.toContain('charging');
    await answer(page, 'back').selectOption('body');
    expect(await page.locator('main').textContent()).toContain('0.3 to 5 mΩ, which leaves much open');
    await page.getByText('The load changes: paste it').tap();
    await answer(page, 'profile').fill('0 40\n600 160\n660 40\n1260 0');
    await page.locator('#run-profile').waitFor();
    const profiled = page.locator('.run-fuses', { hasText: 'Under the load as pasted' });
    await profiled
      .getByText(/comes to \d+/)
      .first()
      .waitFor();
    await answer(page, 'profile').fill('0 40\n600 160\n300 40');
    await profiled.getByText('The profile runs backwards at line 3: 300 s after 600 s.').waitFor();
    expect(await tooWide(page, 390)).toBeLessThanOrEqual(0);
    await context.close();
  });

  it('redraws while a slider moves', async () => {
    const { page } = await bench.open(`${DEMO}#run`);
    await worked(page);
    // The page's own time at work, which other programs on the computer do not lengthen.
    const session = await page.context().newCDPSession(page);
    await session.send('Performance.enable', { timeDomain: 'threadTicks' });
    const atWork = async () => {
      const { metrics } = await session.send('Performance.getMetrics');
      return 1000 * metrics.find(({ name }) => name === 'TaskDuration')!.value;
    };
    const move = (moves: number) =>
      page.evaluate(async (count) => {
        const slider = document.querySelector<HTMLInputElement>('[data-slider=length]')!;
        const asked = document.querySelector('.asked')!;
        for (let i = 0; i < count; i++) {
          await new Promise<void>((settle) => {
            const watch = new MutationObserver(() => {
              watch.disconnect();
              requestAnimationFrame(() => settle());
            });
            watch.observe(asked, { subtree: true, characterData: true, childList: true });
            slider.value = String(2 + ((Number(slider.value) * 10 + 1) % 80) / 10);
            slider.dispatchEvent(new Event('input', { bubbles: true }));
          });
        }
      }, moves);
    await move(30);
    const before = await atWork();
    await move(50);
    const each = (await atWork()) - before;
    console.log(`redraw while a slider moves: ${(each / 50).toFixed(1)} ms of the page's own time`);
    // The aim is 16 ms on a quiet computer; one whose cores are shared is given as much again and half.
    expect(each / 50).toBeLessThan(40);
  });

  it('says how long each lasts at the load’s own peak, under an overload, and names one that is none', async () => {
    const { page, troubles } = await bench.open(`${DEMO}#run`);
    await worked(page);
    const lasting = page.locator('section', { has: page.locator('#run-overload') });
    await lasting
      .getByText(/stays below its 60\s°C at \d+\sA, for 6 hours at least\./)
      .first()
      .waitFor();
    await page.getByText('How long it lasts under an overload').click();
    await answer(page, 'overload').fill('200A');
    await lasting
      .getByText(/comes to its 60\s°C after [\d.]+\smin at 200\sA\./)
      .first()
      .waitFor();
    expect(await lasting.locator('li').count()).toBe(6);
    await answer(page, 'overload').blur();
    expect(await answer(page, 'overload').inputValue()).toBe('200');
    expect(await page.locator('summary', { hasText: 'Under an overload of 200 A' }).count()).toBe(1);
    await answer(page, 'overload').fill('50');
    await lasting
      .getByRole('alert')
      .getByText(/lies below the 80\sA that the load itself draws/)
      .waitFor();
    expect(await page.locator('.run-table').count()).toBe(1);
    await answer(page, 'overload').fill('200');
    await lasting.locator('li').first().waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await lasting.isVisible()).toBe(true);
    await page.emulateMedia({ media: 'screen' });
    await answer(page, 'overload').fill('0');
    expect(await heading(page)).toBe('The overload is 0 A; expected are amps above 0 and up to 10000.');
    expect(troubles).toEqual([]);
  });

  it('prints the question, the cables and the caution without the form', async () => {
    const { page } = await bench.open(`${DEMO}#run`);
    await worked(page);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.run-form').isVisible()).toBe(false);
    expect(await page.locator('.estimate').isVisible()).toBe(true);
    expect(await page.locator('.asked').isVisible()).toBe(true);
  });
});
