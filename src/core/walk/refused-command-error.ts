/** A machine was told to do what may not happen in its state: a mistake of this program, not of whoever made an entry. */
export class RefusedCommandError extends Error {
  override readonly name = "RefusedCommandError";
}
