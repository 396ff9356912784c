import { escaped } from "../worksite/index.ts";

/** Text that is markup of HTML already. Whatever else is put into markup is escaped. */
export class Markup {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }
}

type Part = string | number | Markup | readonly Markup[] | null;

const written = (part: Part): string => {
  if (part === null) return "";
  if (part instanceof Markup) return part.text;
  return typeof part === "object" ? part.map(({ text }) => text).join("\n") : escaped(String(part));
};

/** Markup with values put in: texts escaped, markup as it is, lists of markup line by line, `null` as nothing. */
export function markup(pieces: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return new Markup(pieces.map((piece, index) => piece + written(parts[index] ?? null)).join(""));
}
