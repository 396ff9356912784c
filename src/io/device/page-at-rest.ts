/** How long work that can wait is kept waiting by a page that has always something to do, in ms. */
const LONGEST = 500;
/** Where the browser does not tell when it has nothing to do: long enough for what was entered to be shown, in ms. */
const SHOWN = 100;

/**
 * Resolves once the page has nothing more urgent to do, within half a second: what was entered is on the screen by then. At once
 * where no page is.
 */
export function pageAtRest(): Promise<void> {
  return new Promise((resolve) => {
    if (typeof globalThis.requestIdleCallback === "function") {
      globalThis.requestIdleCallback(() => resolve(), { timeout: LONGEST });
    } else if (typeof globalThis.document === "undefined") resolve();
    else setTimeout(resolve, SHOWN);
  });
}
