export type { HubOptions } from "./hub-options.ts";
export { HubTroubleError } from "./hub-options.ts";
export type { HubConsole, RunningHub } from "./start-hub.ts";
export { startHub } from "./start-hub.ts";
