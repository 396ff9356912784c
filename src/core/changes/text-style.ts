/** How a JSON text is laid out, so that what is written into it looks like the rest. */
export interface TextStyle {
  /** What ends a line. */
  readonly lineEnd: string;
  /** What a level is set in by. */
  readonly indent: string;
  /** True when the whole text stands on one line. */
  readonly isOneLine: boolean;
  /** The longest line that holds a whole list or object; `null` when every one is spread over lines. */
  readonly width: number | null;
  /** What stands inside braces on one line, on either side: a blank or nothing. */
  readonly padding: string;
  /** What stands inside brackets on one line, on either side. */
  readonly listPadding: string;
  /** What stands behind a colon. */
  readonly colon: string;
  /** What stands behind a comma on one line. */
  readonly comma: string;
}

/** A list or object on one line, with something in it. */
const INLINE = /^[ \t]*(?:"(?:[^"\\]|\\.)*"[ \t]*:[ \t]*)?(?:\{.+\}|\[.+\]),?[ \t]*\r?$/gm;

const count = (text: string, pattern: RegExp) => text.match(pattern)?.length ?? 0;

/** The layout of a JSON text, from what most of it does. */
export function textStyleOf(text: string): TextStyle {
  const body = text.trim();
  const lines = text.match(INLINE) ?? [];
  const blank = (tight: RegExp, wide: RegExp) => (count(text, tight) > count(text, wide) ? "" : " ");
  const isOneLine = !body.includes("\n");
  return {
    lineEnd: /\r\n/.test(text) ? "\r\n" : "\n",
    indent: /^[{[]\s*?\n([ \t]+)/.exec(body)?.[1] ?? "  ",
    isOneLine,
    width: isOneLine || lines.length === 0 ? null : Math.max(...lines.map((line) => line.trimEnd().length)),
    padding: isOneLine && !/\{ "/.test(text) ? "" : blank(/\{"/g, /\{ "/g),
    listPadding: count(text, /\[ +["\d[{]/g) > count(text, /\[["\d[{]/g) ? " " : "",
    colon: blank(/":[^\s]/g, /": /g),
    comma: blank(/,["[{\d-]/g, /, ["[{\d-]/g),
  };
}

/** A JSON value on one line. */
export function onOneLine(value: unknown, style: TextStyle): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const { padding, listPadding, colon, comma } = style;
  if (Array.isArray(value)) {
    if (value.length === 0) return "[]";
    const entries = value.map((entry) => onOneLine(entry, style)).join(`,${comma}`);
    return `[${listPadding}${entries}${listPadding}]`;
  }
  const members = Object.entries(value).map(
    ([key, child]) => `${JSON.stringify(key)}:${colon}${onOneLine(child, style)}`,
  );
  return members.length === 0 ? "{}" : `{${padding}${members.join(`,${comma}`)}${padding}}`;
}
