import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, startBench } from './support/bench.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

describe('the dialog that puts a trial away', () => {
  it('asks for the reason before it is pressed, and stands to the left like every dialog', async () => {
    const { page } = await bench.open('/');
    await page
      .getByRole('button', { name: /^Put away: / })
      .first()
      .click();
    const dialog = page.locator('dialog[open]');
    expect(await dialog.textContent()).toContain('It needs a reason');
    await dialog.getByRole('button', { name: 'Put away' }).click();
    const trouble = dialog.getByRole('alert');
    await trouble.waitFor();
    for (const part of [dialog.locator('h2'), dialog.locator('.note').first(), trouble])
      expect(await part.evaluate((one) => getComputedStyle(one).textAlign)).toBe('start');
    const wide = async (of: typeof trouble) => (await of.boundingBox())!.width;
    expect(await wide(trouble)).toBeCloseTo(await wide(dialog.getByLabel('Why, in your words')), 0);
  });
});
