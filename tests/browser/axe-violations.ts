import AxeBuilder from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** What is wrong with the screen as it stands, in a line each. */
export async function violations(page: Page, within: string): Promise<string[]> {
  const { violations: found, passes } = await new AxeBuilder({ page })
    .include(within)
    .withTags(RULES)
    .analyze();
  // A page that axe could not look at would pass everything.
  expect(passes.length).toBeGreaterThan(3);
  return found.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target.join(" ")} ${failureSummary ?? ""}`),
  );
}
