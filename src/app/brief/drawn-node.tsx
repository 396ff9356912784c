import { createElement, memo } from "react";
import type { DrawnNode } from "../../core/worksite/index.ts";

/** The name that React has for an attribute of SVG. */
const propertyName = (name: string): string =>
  name === "class"
    ? "className"
    : name.startsWith("data-")
      ? name
      : name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

function elementOf({ tag, attributes, children, text }: DrawnNode, key: number): React.ReactElement {
  const properties = Object.entries(attributes).map(([name, value]) => [propertyName(name), value]);
  return createElement(
    tag,
    { ...Object.fromEntries(properties), key },
    ...(text === null ? children.map(elementOf) : [text]),
  );
}

/** A node of a drawing. One that is the same object as before is not drawn again. */
export const Drawn = memo(function Drawn({ node }: { readonly node: DrawnNode }) {
  return elementOf(node, 0);
});
