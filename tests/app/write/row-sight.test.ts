import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { scrollerOf } from "../../../src/app/write/page-scroll.ts";
import { revealRow } from "../../../src/app/write/row-sight.ts";

/** A page in the shadow of something that scrolls it, as the app's pages are, 100 px to 600 px of the window. */
function page(): { readonly write: Element; readonly scroller: Element } {
  const host = document.createElement("div");
  document.body.append(host);
  const shadow = host.attachShadow({ mode: "open" });
  shadow.innerHTML = '<div id="scrolls" style="overflow-y: auto"><slot></slot></div>';
  host.innerHTML =
    '<article class="write"><div class="write-table"><p data-row="a"></p></div><div class="write-beside"></div></article>';
  const [write, scroller] = [host.querySelector(".write"), shadow.querySelector("#scrolls")];
  if (!write || !scroller) throw new Error("there is no page");
  put(scroller, new DOMRect(0, 100, 800, 500));
  put(write.querySelector(".write-table"), new DOMRect(0, 0, 500, 3000));
  put(write.querySelector(".write-beside"), new DOMRect(500, 100, 300, 500));
  return { write, scroller };
}

function put(element: Element | null, box: DOMRect): void {
  if (element) element.getBoundingClientRect = () => box;
}

const row = (write: Element) => write.querySelector('[data-row="a"]');

describe("what of the table is in sight", () => {
  let shown: ReturnType<typeof page>;
  beforeEach(() => {
    shown = page();
  });
  afterEach(() => document.body.replaceChildren());

  it("[WRT1] is scrolled by the element around it, beyond the shadow that it stands in", () => {
    expect(scrollerOf(shown.write)).toBe(shown.scroller);
    expect(scrollerOf(document.body)).toBe(document.scrollingElement ?? document.documentElement);
  });

  it("[WRT3] a row that is seen stays where it is, and another comes to the middle of what is seen", () => {
    put(row(shown.write), new DOMRect(0, 200, 500, 50));
    revealRow(shown.write, "a");
    expect(shown.scroller.scrollTop).toBe(0);
    put(row(shown.write), new DOMRect(0, 1000, 500, 50));
    revealRow(shown.write, "a");
    expect(shown.scroller.scrollTop).toBe(1025 - 350);
  });

  it("[WRT3] a row under what lies over the table is not seen", () => {
    put(shown.write.querySelector(".write-beside"), new DOMRect(0, 400, 500, 200));
    put(row(shown.write), new DOMRect(0, 450, 500, 50));
    revealRow(shown.write, "a");
    expect(shown.scroller.scrollTop).toBe(475 - 250);
    revealRow(shown.write, "gone");
    revealRow(null, "a");
  });
});
