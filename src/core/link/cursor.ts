/** How far a reader has read a hub's log: everything up to and including `offset`, in the store called `epoch`. */
export interface Cursor {
  /** The name of the store. A different name means the store was recreated or restored from a copy, so offsets differ. */
  readonly epoch: string;
  readonly offset: number;
}

const CURSOR_PATTERN = /^([A-Za-z0-9_-]{1,64}):(0|[1-9]\d{0,15})$/;

/** Writes a cursor as `<epoch>:<offset>`, the id of a server-sent event. */
export function writeCursor({ epoch, offset }: Cursor): string {
  return `${epoch}:${offset}`;
}

/** Reads `<epoch>:<offset>`; `null` when the text is not a cursor. */
export function readCursor(text: string): Cursor | null {
  const [, epoch, digits] = CURSOR_PATTERN.exec(text) ?? [];
  if (epoch === undefined || digits === undefined) return null;
  const offset = Number(digits);
  return Number.isSafeInteger(offset) ? { epoch, offset } : null;
}
