import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Rules of WCAG 2.2, A and AA, and good practice. */
export const AXE_RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** All that colours can alter. */
export const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];

/**
 * What axe-core finds by some of its rules, in words; nothing where it finds nothing.
 * @param within the part of the page that is judged; all of it unless given
 */
export const axeFaults = async (page: Page, rules: readonly string[], within = 'html'): Promise<string[]> => {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(AXE);
  return page.evaluate(
    async ([runOnly, part]) => {
      const { axe } = globalThis as unknown as {
        axe: { run: (part: string, options: object) => Promise<AxeResults> };
      };
      const { violations, passes } = await axe.run(part, { runOnly });
      if (passes.length === 0) return ['nothing was judged'];
      return violations.flatMap(({ id, nodes }) =>
        nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')}: ${failureSummary ?? ''}`),
      );
    },
    [rules, within] as const,
  );
};
