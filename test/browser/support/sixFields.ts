import type { Page } from 'playwright-core';

/** An invented honest 2 AWG: 318.7 g/m over 8.89 g/cm³ and a lay of 1.03 make 34.8 mm². */
export const HONEST = {
  'What the label says': '2 AWG OFC',
  'Mass of the bare conductor': '95.6 g',
  'Length that was weighed': '300 mm',
  Ohms: '0.76 mohm',
  'Length between the voltage contacts': '1500 mm',
  'Temperature of the copper': '20 C',
};

export async function fillFields(page: Page, fields: Record<string, string>): Promise<void> {
  for (const [label, text] of Object.entries(fields)) await page.getByLabel(label, { exact: false }).fill(text);
}

/** Waits until the answer belongs to what stands in the fields. */
export async function answered(page: Page): Promise<void> {
  await page.locator('.six .answer[aria-busy=false]').waitFor();
}
