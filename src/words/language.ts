/** A language, as far as it is more than its words. */
export interface Language {
  /** As BCP 47 writes it: plural forms, lists and numbers follow it. */
  readonly tag: string;
  readonly direction: "ltr" | "rtl";
}
