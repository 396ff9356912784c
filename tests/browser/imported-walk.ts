import { expect, type Page } from "@playwright/test";

/** A file given to the app. */
export interface GivenText {
  readonly name: string;
  readonly text: string;
}

/** Gives the shelf a file through its file picker and returns what it says of it. */
export async function chooseFile(page: Page, { name, text }: GivenText): Promise<string> {
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Choose files" }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
  const message = page.locator(".shelf-message", { hasText: name });
  await expect(message).toBeVisible();
  return message.textContent().then((words) => words ?? "");
}

/** Brings the log of a walk in and opens one of its screens. */
export async function openImported(
  page: Page,
  { walk, text }: { readonly walk: string; readonly text: string },
  screen: "follow" | "timeline" | "review" | "print-walk" | "print-paper" | "handover" = "follow",
): Promise<void> {
  await page.goto("/");
  await chooseFile(page, { name: `${walk}.walk.jsonl`, text });
  await page.goto(`/${screen}/${walk}`);
}
