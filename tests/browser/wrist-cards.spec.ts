import { expect, test } from "@playwright/test";

test("wrist cards of every size fit their sheets on A4 and letter, and nothing on one is cut off or lost", async ({
  page,
}) => {
  await page.goto("/cards/example-osier-ranging-head");
  await expect(page.locator(".card").first()).toBeVisible();
  for (const size of ["large", "small"]) {
    await page.getByLabel("Size").selectOption(size);
    await expect(page.getByLabel("Width, mm")).toHaveValue(size === "large" ? "90" : "58");
    const looked = await page.evaluate(() => {
      const all = (selector: string) => [...document.querySelectorAll(selector)];
      const textOf = (elements: Element[]) => elements.map((one) => one.textContent);
      return {
        cut: all(".card-body").filter((body) => body.scrollHeight > body.clientHeight + 1).length,
        cutText: all(".card .card-row").filter((row) => row.scrollWidth > row.clientWidth + 1).length,
        printed: textOf(all(".card .card-row")),
        drawn: textOf(all(".cards-drawn .card-row")),
        sheets: all(".card-sheet").length,
      };
    });
    expect(looked.cut, size).toBe(0);
    expect(looked.cutText, size).toBe(0);
    expect(looked.printed, size).toEqual(looked.drawn);
    expect(looked.printed.length).toBeGreaterThan(300);
    for (const format of ["A4", "Letter"]) {
      const pdf = (await page.pdf({ format })).toString("latin1");
      expect((pdf.match(/\/Type\s*\/Page\b/g) ?? []).length, `${size} on ${format}`).toBe(looked.sheets);
    }
  }
});
