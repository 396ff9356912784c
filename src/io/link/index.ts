export type { JoinOutcome, LinkKeeper, LinkNotice, LinkStatus, Recovery, Sharing } from "./link-keeper.ts";
export type { OpenLinksParts } from "./open-links.ts";
export { openLinks } from "./open-links.ts";
