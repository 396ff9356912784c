import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { vi } from "vitest";
import { STEADY_FOR } from "../../src/app/follow/tap-guard.ts";
import type { Engine, EngineBrowser } from "./engine.ts";

/** How a page is asked for elements: Testing Library, as a script that can be put into it. */
const QUERIES = readFileSync(
  createRequire(import.meta.url).resolve("@testing-library/dom/dist/@testing-library/dom.umd.min.js"),
  "utf8",
);

/** Where pictures of the screens are left, to be looked at. */
const PICTURES = "test-results/engines";

const WAIT = { timeout: 60_000, interval: 200 };

/** A role of WAI-ARIA, the name, and what it is looked for in. */
export interface Control {
  readonly role: string;
  /** A name as written, or what it begins with. */
  readonly name: string | RegExp;
  /** A CSS selector; the whole page when it is left out. */
  readonly within?: string;
}

/** The app in one engine, with the hands of somebody who looks for names and taps what they see. */
export class Tablet {
  readonly engine: Engine["name"];
  readonly #browser: EngineBrowser;

  private constructor(engine: Engine["name"], browser: EngineBrowser) {
    this.engine = engine;
    this.#browser = browser;
  }

  static async open(engine: Engine): Promise<Tablet> {
    return new Tablet(engine.name, await engine.open());
  }

  async goto(address: string): Promise<void> {
    await this.#browser.goto(address);
    await this.#ready();
  }

  async reload(): Promise<void> {
    await this.#browser.reload();
    await this.#ready();
  }

  /** What an expression of the page comes to. */
  run<T>(expression: string): Promise<T> {
    return this.#browser.run<T>(expression);
  }

  /** Waits for a control and taps it. */
  async tap(control: Control): Promise<void> {
    await this.#tapWhenSteady(await this.#found(control));
  }

  /** Waits for the first element of a CSS selector that is seen, and taps it. */
  async tapFirst(selector: string): Promise<void> {
    const element = `[...document.querySelectorAll(${JSON.stringify(selector)})].find((one) => one.checkVisibility())`;
    await this.#until(`${element} !== undefined`, selector);
    await this.#tapWhenSteady(element);
  }

  /** Waits for a field and writes into it; a new line is the key Enter. */
  async write(control: Control, text: string): Promise<void> {
    await this.#browser.write(await this.#found(control), text);
  }

  /** Gives the shelf a file, as the picker of the system would: the picker itself is no part of the page. */
  async choose(file: { readonly name: string; readonly text: string }): Promise<void> {
    await this.run(`void (HTMLInputElement.prototype.click = function () {
      const given = new DataTransfer();
      given.items.add(new File([${JSON.stringify(file.text)}], ${JSON.stringify(file.name)}, { type: "application/json" }));
      this.files = given.files;
      this.dispatchEvent(new Event("change", { bubbles: true }));
    })`);
    await this.tap({ role: "button", name: "Choose files" });
    await this.sees(".shelf-message", file.name);
  }

  /** Waits until a part of the page that is seen has a text in it. */
  async sees(selector: string, text: string): Promise<void> {
    await this.#until(
      `[...document.querySelectorAll(${JSON.stringify(selector)})].some((one) => one.checkVisibility() && one.textContent.includes(${JSON.stringify(text)}))`,
      `${text} in ${selector}`,
    );
  }

  /** Waits until so many elements of a CSS selector are there. */
  async counts(selector: string, count: number): Promise<void> {
    await this.#until(
      `document.querySelectorAll(${JSON.stringify(selector)}).length === ${count}`,
      `${count} of ${selector}`,
    );
  }

  /** Leaves a picture of the screen. */
  async picture(name: string): Promise<void> {
    mkdirSync(PICTURES, { recursive: true });
    writeFileSync(
      join(PICTURES, `${name}-${this.engine.toLowerCase()}.png`),
      await this.#browser.screenshot(),
    );
  }

  /** The page as it comes on paper, as PDF. */
  paper(): Promise<Buffer> {
    return this.#browser.paper();
  }

  close(): Promise<void> {
    return this.#browser.close();
  }

  /** Puts the queries into a page that was loaded. */
  async #ready(): Promise<void> {
    await this.run(`void (() => { if (!globalThis.TestingLibraryDom) { ${QUERIES} } })()`);
  }

  /** Taps once the element has been where it is for so long that a tap on it counts. */
  async #tapWhenSteady(element: string): Promise<void> {
    await this.run(`(${element}).scrollIntoView({ block: "center" })`);
    const place = () => this.run<string>(`JSON.stringify((${element})?.getBoundingClientRect() ?? null)`);
    await vi.waitFor(async () => {
      const before = await place();
      await new Promise((resolve) => setTimeout(resolve, STEADY_FOR + 100));
      if (before === "null" || (await place()) !== before) throw new Error(`${element} does not keep still.`);
    }, WAIT);
    await this.#browser.tap(element);
  }

  async #found({ role, name, within }: Control): Promise<string> {
    const named = typeof name === "string" ? JSON.stringify(name) : String(name);
    const root = within === undefined ? "document.body" : `document.querySelector(${JSON.stringify(within)})`;
    const element = `TestingLibraryDom.queryAllByRole(${root} ?? document.createElement("p"), ${JSON.stringify(role)}, { name: ${named} })[0]`;
    await this.#until(`${element} !== undefined`, `${role} ${named}`);
    return element;
  }

  async #until(expression: string, what: string): Promise<void> {
    await vi.waitFor(async () => {
      if (!(await this.run<boolean>(expression)))
        throw new Error(`${this.engine}: ${what} is not there: ${await this.#shown()}`);
    }, WAIT);
  }

  /** What the page says, for a failure. */
  async #shown(): Promise<string> {
    return (await this.run<string>("document.body.innerText")).slice(0, 600);
  }
}
