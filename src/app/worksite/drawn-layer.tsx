import { createElement, memo } from "react";
import type { DrawnNode } from "../../core/worksite/index.ts";

/** The name that React has for an attribute of SVG. */
const propertyName = (name: string): string =>
  name === "class"
    ? "className"
    : name.startsWith("data-")
      ? name
      : name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

const propertiesOf = (attributes: DrawnNode["attributes"]) =>
  Object.fromEntries(Object.entries(attributes).map(([name, value]) => [propertyName(name), value]));

/** Somebody stays the same element when others come and go, so that what is theirs can slide. */
function elementOf({ tag, attributes, children, text }: DrawnNode, place: number): React.ReactElement {
  const key = attributes["data-crew"] ?? place;
  return createElement(
    tag,
    { ...propertiesOf(attributes), key },
    ...(text === null ? children.map(elementOf) : [text]),
  );
}

/** A layer of a drawing. One that is the same object as before is not drawn again. */
export const DrawnLayer = memo(function DrawnLayer({ node }: { readonly node: DrawnNode }) {
  return elementOf(node, 0);
});
