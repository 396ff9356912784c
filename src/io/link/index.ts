export type { JoinOutcome, LinkKeeper, LinkNotice, LinkStatus, Sharing } from "./link-keeper.ts";
export type { OpenLinksParts } from "./open-links.ts";
export { openLinks } from "./open-links.ts";
