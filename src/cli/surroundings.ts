import type { Instant } from "../core/units/index.ts";
import type { ServeHub } from "./hub-command.ts";
import type { HubStore } from "./hub-store-command.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";

/** What the program needs from outside its arguments. */
export interface Surroundings {
  readonly terminal: Terminal;
  /** The present instant. It is asked for only when a command starts from now. */
  now(): Instant;
  /** Runs a hub. It is passed in, since a hub is not part of the command line. */
  readonly serveHub: ServeHub;
  /** Backs up a hub's log and brings it back, for the same reason. */
  readonly hubStore: HubStore;
}

/** Is told how a command ended. */
export type Ended = (status: ExitStatus) => void;
