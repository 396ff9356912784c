/**
 * Thrown when a machine gets a command that its state does not allow. That is a bug in this program and never the
 * fault of the person who made an entry.
 */
export class RefusedCommandError extends Error {
  override readonly name = "RefusedCommandError";
}
