export { BeyondStrip } from "./beyond-strip.tsx";
export { JoinForm } from "./join-form.tsx";
export { LinkPanel } from "./link-panel.tsx";
export { linkWords } from "./link-words.ts";
export { useLink } from "./use-link.ts";
export { useMissingWalk } from "./use-missing-walk.ts";
export type { Notices } from "./use-notices.ts";
export { useNotices } from "./use-notices.ts";
