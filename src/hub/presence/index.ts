export type { PresenceDocument } from "./presence-board.ts";
export { PresenceBoard } from "./presence-board.ts";
