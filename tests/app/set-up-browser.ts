import "@testing-library/jest-dom/vitest";
import "fake-indexeddb/auto";
import { cleanup } from "@testing-library/react";
import { afterEach, vi } from "vitest";

afterEach(cleanup);

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
