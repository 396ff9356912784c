import "@testing-library/jest-dom/vitest";
import "fake-indexeddb/auto";
import { cleanup, configure } from "@testing-library/react";
import { afterEach, vi } from "vitest";

afterEach(cleanup);

// What comes a moment later, as what is loaded only when it is shown, comes much later on a machine that does other work.
configure({ asyncUtilTimeout: 20_000 });

// What a browser has and jsdom lacks; a test that is about one of these puts its own in place.
class WatchesNothing {
  observe(): void {}
  unobserve(): void {}
  disconnect(): void {}
  takeRecords(): [] {
    return [];
  }
}

vi.stubGlobal("IntersectionObserver", WatchesNothing);
vi.stubGlobal("ResizeObserver", WatchesNothing);
window.matchMedia ??= (media) => ({
  media,
  matches: false,
  onchange: null,
  addEventListener: () => {},
  removeEventListener: () => {},
  addListener: () => {},
  removeListener: () => {},
  dispatchEvent: () => false,
});
document.elementFromPoint ??= () => null;
Element.prototype.scrollIntoView ??= () => {};
