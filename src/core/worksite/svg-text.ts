import type { Drawing, DrawnNode } from "./drawing.ts";
import { WORKSITE_STYLE } from "./worksite-style.ts";

const ESCAPED: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** What XML allows in no form: most control characters and lone halves of pairs. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is to be found
const NOT_IN_XML = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Surrogate}/gu;

/** A text as it stands in markup of HTML and XML: it becomes no markup, and has no letters that XML forbids. */
export const escaped = (text: string): string =>
  text.replace(NOT_IN_XML, "\uFFFD").replace(/[&<>"']/g, (sign) => ESCAPED[sign] ?? sign);

/** A node as markup of SVG, escaped. */
export function nodeText({ tag, attributes, children, text }: DrawnNode): string {
  const written = Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`)
    .join("");
  return `<${tag}${written}>${text === null ? children.map(nodeText).join("") : escaped(text)}</${tag}>`;
}

/**
 * A drawing as the text of an SVG image, escaped, so that nothing a procedure says becomes markup. `style` is put into
 * it: an image sees no style from outside.
 */
export function svgText({ width, height, layers }: Drawing, style: string = WORKSITE_STYLE): string {
  const [wide, high] = [Math.ceil(width), Math.ceil(height)];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="worksite" width="${wide}" height="${high}" viewBox="0 0 ${wide} ${high}">`,
    style === "" ? "" : `<style>${escaped(style)}</style>`,
    ...layers.map(nodeText),
    "</svg>",
  ].join("");
}
