import { vi } from "vitest";

/** The service worker as a test has it. */
export const worker = { isWaiting: true, load: vi.fn(), setWaiting: vi.fn() };

/** What the build's own module offers under test: vitest.config.ts puts this file in its place. */
export function useRegisterSW() {
  return { needRefresh: [worker.isWaiting, worker.setWaiting], updateServiceWorker: worker.load };
}
