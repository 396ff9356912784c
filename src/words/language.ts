import type { MessageKey } from "./argument.ts";

/** A language with all its messages. */
export interface Language {
  /** As BCP 47 writes it: plural forms, lists and numbers follow it. */
  readonly tag: string;
  readonly direction: "ltr" | "rtl";
  /** Every message in MessageFormat 2. */
  readonly catalogue: Readonly<Record<MessageKey, string>>;
}
