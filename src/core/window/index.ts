export type { ClosedWindow } from "./closed-window.ts";
export { closedWindowAt } from "./closed-window.ts";
export { contactMessage, contactWindowsOf } from "./contact-windows.ts";
export type { Fit } from "./window-fit.ts";
export { earliestFit, latestFit } from "./window-fit.ts";
export type { Span, WindowSpans } from "./window-spans.ts";
export { HORIZON, windowSpansOf } from "./window-spans.ts";
