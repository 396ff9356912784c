import { lazy } from "react";

/** The text pane, which is a chunk of its own: whoever shows it stands within a Suspense. */
export const LazyTextPane = lazy(async () => ({ default: (await import("./text-pane.tsx")).TextPane }));
