export { runCommandLine } from "./command-line.ts";
export type { HubArguments, ServeHub } from "./hub-command.ts";
export type { Surroundings } from "./surroundings.ts";
export type { ExitStatus, Terminal } from "./terminal.ts";
export { EXIT } from "./terminal.ts";
export { UnusableInputError } from "./unusable-input-error.ts";
