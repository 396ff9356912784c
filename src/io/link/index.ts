export type { JoinOutcome, LinkKeeper } from "./link-keeper.ts";
export { openLinks } from "./link-keeper.ts";
export type { LinkNotice, LinkStatus } from "./link-status.ts";
