/** Where a command writes: results to `out`, messages to `err`. Injected, so that commands can be run without a process. */
export interface Terminal {
  out(text: string): void;
  err(text: string): void;
}

/** How a command ends: all is well, there are findings of level error (or a log does not fold cleanly), or its input was of no use. */
export const EXIT = { fine: 0, findings: 1, unusable: 2 } as const;

/** One of {@link EXIT}. */
export type ExitStatus = (typeof EXIT)[keyof typeof EXIT];
