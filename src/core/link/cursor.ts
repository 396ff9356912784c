/** How far a reader has read a hub's log: everything up to and including `offset`, in the store called `epoch`. */
export interface Cursor {
  /** The name of the store. A different name means the store was recreated or restored from a copy, so offsets differ. */
  readonly epoch: string;
  readonly offset: number;
  /** What the hub gave along, by which it knows later that it was told this very log; 32 letters, digits, `-` and `_`. */
  readonly check?: string;
}

const CHECK_PATTERN = /^[A-Za-z0-9_-]{32}$/;
const CURSOR_PATTERN = /^([A-Za-z0-9_-]{1,64}):(0|[1-9]\d{0,15})(?::([A-Za-z0-9_-]{32}))?$/;

/** Whether a value can be the check of a cursor. */
export function isCursorCheck(value: unknown): value is string {
  return typeof value === "string" && CHECK_PATTERN.test(value);
}

/** Writes a cursor as `<epoch>:<offset>`, or `<epoch>:<offset>:<check>` where it has a check. */
export function writeCursor({ epoch, offset, check }: Cursor): string {
  return check === undefined ? `${epoch}:${offset}` : `${epoch}:${offset}:${check}`;
}

/** Reads `<epoch>:<offset>[:<check>]`; `null` when the text is not a cursor. */
export function readCursor(text: string): Cursor | null {
  const [, epoch, digits, check] = CURSOR_PATTERN.exec(text) ?? [];
  if (epoch === undefined || digits === undefined) return null;
  const offset = Number(digits);
  if (!Number.isSafeInteger(offset)) return null;
  return check === undefined ? { epoch, offset } : { epoch, offset, check };
}
