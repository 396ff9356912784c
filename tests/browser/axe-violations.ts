import AxeBuilder from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/**
 * What is wrong with the screen as it stands, in a line each. With `only`, the named rules of axe are looked at and no
 * others.
 */
export async function violations(page: Page, within: string, only?: readonly string[]): Promise<string[]> {
  const builder = new AxeBuilder({ page })
    .include(within)
    // The app has no frames, for which axe would open another page each time; and what passes need only be counted.
    .setLegacyMode()
    .options({ resultTypes: ["violations"] });
  const { violations: found, passes } = await (only
    ? builder.withRules([...only])
    : builder.withTags(RULES)
  ).analyze();
  // A page that axe could not look at would pass everything.
  expect(passes.length).toBeGreaterThan(only ? 0 : 3);
  return found.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target.join(" ")} ${failureSummary ?? ""}`),
  );
}
