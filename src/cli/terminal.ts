/**
 * Where a command writes: results to `out`, messages to `err`. It is passed in, so that commands can be run without a
 * process.
 */
export interface Terminal {
  out(text: string): void;
  err(text: string): void;
}

/**
 * Exit statuses: all is well; there are findings of level error, or a log does not fold cleanly; the input was
 * unusable.
 */
export const EXIT = { fine: 0, findings: 1, unusable: 2 } as const;

/** One of {@link EXIT}. */
export type ExitStatus = (typeof EXIT)[keyof typeof EXIT];
