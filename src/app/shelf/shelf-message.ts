/** What the last action on the shelf came to, in sentences. */
export interface ShelfMessage {
  readonly lines: readonly string[];
}
