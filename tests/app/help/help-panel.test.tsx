import { render as draw, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import type { ReactElement } from "react";
import { afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import type { HelpScreen } from "../../../src/app/help/help-contents.ts";
import { HELP } from "../../../src/app/help/help-sections.ts";
import { HelpButton, HelpPanel } from "../../../src/app/help/index.ts";
import * as language from "../../../src/app/language/index.ts";
import { ShowPageContext } from "../../../src/app/session/index.ts";
import { inWords, words } from "../../../src/words/index.ts";

vi.mock(import("../../../src/app/language/index.ts"), async (original) => {
  const module = await original();
  return { ...module, wholeLanguage: vi.fn(module.wholeLanguage) };
});

// The page is loaded when it is asked for; here that must not count as time.
beforeAll(() => import("../../../src/app/help/help-page.tsx"), 30_000);

afterEach(() => {
  vi.mocked(language.wholeLanguage).mockReset();
});

const show = vi.fn();
const render = (part: ReactElement) => draw(<ShowPageContext value={show}>{part}</ShowPageContext>);

const SCREENS = Object.keys(HELP) as HelpScreen[];

describe("the help of a screen", () => {
  it.each(SCREENS)(
    "[HLP1] of %s is one page, every line of it said once, ending with what it is not",
    async (name) => {
      render(<HelpPanel screen={name} onClose={vi.fn()} />);
      const panel = await screen.findByRole("dialog", { name: inWords(HELP[name].title) });
      const said = within(panel)
        .getAllByRole("listitem")
        .map((item) => item.textContent);
      expect(said.length).toBeGreaterThan(5);
      expect(new Set(said).size).toBe(said.length);
      expect(said).toContain(words("guide/advises"));
      const headings = within(panel)
        .getAllByRole("heading", { level: 3 })
        .map((heading) => heading.textContent);
      expect(headings).toContain(words("guide/trouble"));
      expect(headings.at(-1)).toBe(words("guide/advice"));
    },
  );

  it("[HLP1] leads to the index of marks, and closes", async () => {
    const onClose = vi.fn();
    render(<HelpPanel screen="shelf" onClose={onClose} />);
    await userEvent.click(await screen.findByRole("button", { name: words("marks/title") }));
    expect(show).toHaveBeenCalledExactlyOnceWith("/marks");
    expect(onClose).toHaveBeenCalledOnce();
  });

  it("[HLP1] explains every mark of the follow screen, the alerts by shape, and the marks of the braid by drawing them", async () => {
    render(<HelpPanel screen="follow" onClose={vi.fn()} />);
    const panel = await screen.findByRole("dialog");
    const text = panel.textContent ?? "";
    for (const mark of [
      "▲",
      "◆",
      "●",
      "○",
      "strand",
      "bead",
      "knot",
      "loose",
      "done (bold)",
      "Turn-back",
      "Margin",
    ])
      expect(text).toContain(mark);
    const drawn = [...panel.querySelectorAll("li")].filter((item) => item.querySelector("svg"));
    expect(drawn.length).toBeGreaterThanOrEqual(6);
    // What is drawn beside a text must not be read out on top of it.
    expect(within(panel).queryByRole("img")).toBeNull();
  });

  it("[HLP1] is opened by a button, takes the focus, and gives it back when Escape closes it", async () => {
    const user = userEvent.setup();
    render(<HelpButton screen="shelf" />);
    const button = screen.getByRole("button", { name: "Help" });
    await user.click(button);
    const panel = await screen.findByRole("dialog");
    expect(button).toHaveAttribute("aria-expanded", "true");
    expect(panel).toHaveFocus();
    await user.keyboard("{Escape}");
    expect(screen.queryByRole("dialog")).toBeNull();
    expect(button).toHaveAttribute("aria-expanded", "false");
    expect(button).toHaveFocus();
  });

  it("[HLP1] that cannot be loaded says so, leaves the screen alone, and is asked for anew the next time", async () => {
    vi.mocked(language.wholeLanguage).mockRejectedValueOnce(new TypeError("no network"));
    const user = userEvent.setup();
    render(
      <main>
        <p>the screen</p>
        <HelpButton screen="shelf" />
      </main>,
    );
    const button = screen.getByRole("button", { name: "Help" });
    await user.click(button);
    expect(await screen.findByRole("alert")).toHaveTextContent(words("parts/help-not-there"));
    expect(screen.getByText("the screen")).toBeVisible();
    await user.click(button);
    await waitFor(() => expect(screen.queryByRole("alert")).toBeNull());
    await user.click(button);
    expect(await screen.findByRole("dialog")).toBeVisible();
  });
});
