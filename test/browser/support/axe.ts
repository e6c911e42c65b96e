import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const SCRIPT = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The rules of WCAG 2.2, levels A and AA. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Every breach that axe-core sees on the page, as one line each: the rule, then where. */
export async function accessibilityBreaches(page: Page): Promise<string[]> {
  await page.evaluate(SCRIPT);
  return page.evaluate(async (tags) => {
    const { axe } = globalThis as unknown as { axe: { run(context: Document, options: object): Promise<AxeResult> } };
    interface AxeResult {
      violations: { id: string; nodes: { target: unknown[]; failureSummary?: string }[] }[];
    }
    const result = await axe.run(document, { runOnly: { type: 'tag', values: tags } });
    return result.violations.flatMap((breach) =>
      breach.nodes.map(
        (node) =>
          `${breach.id}: ${node.target.join(' ')} ${(node.failureSummary ?? '').split('\n').slice(1, 2).join('')}`,
      ),
    );
  }, TAGS);
}

/** The same in both colour schemes, each breach with its scheme; the page is left in the dark one. */
export async function breachesLightAndDark(page: Page): Promise<string[]> {
  const breaches: string[] = [];
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    breaches.push(...(await accessibilityBreaches(page)).map((breach) => `${colorScheme}: ${breach}`));
  }
  return breaches;
}
