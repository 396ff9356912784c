export type { HubOptions } from "./hub-options.ts";
export { HubTroubleError } from "./hub-options.ts";
export type { Restored } from "./keep-store.ts";
export { backupHub, restoreHub } from "./keep-store.ts";
export type { HubConsole, RunningHub } from "./start-hub.ts";
export { startHub } from "./start-hub.ts";
