const FIELD_OF_COLUMN: Readonly<Record<string, string>> = { who: "by", where: "at" };

/** Moves the focus to the first control of a field of the details. */
export function focusField(beside: HTMLElement | null, column: string): void {
  const field = FIELD_OF_COLUMN[column] ?? column;
  beside?.querySelector<HTMLElement>(`[data-field="${field}"] :is(input, select, textarea, button)`)?.focus();
}
