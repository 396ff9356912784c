import { message } from "../../words/index.ts";
import { parseDuration } from "../units/index.ts";
import { errorAt } from "./error-at.ts";
import type { Finding } from "./finding.ts";
import { nestingFindings } from "./item-nesting.ts";
import { pictureFindings } from "./picture-findings.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, textOf } from "./raw-file.ts";
import { idOf } from "./raw-step.ts";
import type { Resolve } from "./resolve-reference.ts";
import { locationFindings } from "./resolve-reference.ts";

/** The errors in what a procedure lists beside its tasks: crew, routes, items, supplies, watches, windows, pictures and site. */
export function thingFindings(root: RawPart, resolve: Resolve): Finding[] {
  const list = (key: string) => entries(member(root, key));
  const items = list("items");
  return [
    ...list("crew").flatMap((crew) => [
      ...resolve("place", member(crew, "start")),
      ...resolve("place", member(member(crew, "tether"), "anchor")),
    ]),
    ...list("routes").flatMap((route) => routeFindings(route, resolve)),
    ...items.flatMap((item) => [
      ...locationFindings(resolve, member(item, "start")),
      ...locationFindings(resolve, member(item, "end")),
    ]),
    ...nestingFindings(items, "start"),
    ...nestingFindings(items, "end"),
    ...list("supplies").flatMap((supply) => resolve("crew-member", member(supply, "crew"))),
    ...list("watches").flatMap((watch) => watchFindings(watch, resolve)),
    ...list("windows").flatMap(spanFindings),
    ...resolve("picture", member(member(root, "site"), "picture")),
    ...pictureFindings(list("pictures")),
  ];
}

function routeFindings(route: RawPart, resolve: Resolve): Finding[] {
  const between = member(route, "between");
  const ends = entries(between);
  const found = ends.flatMap((end) => resolve("place", end));
  if (ends.length === 2 && ends[0]?.value === ends[1]?.value)
    found.push(errorAt(between, "file/wrong-value", message("file/route-to-itself")));
  return found;
}

function watchFindings(watch: RawPart, resolve: Resolve): Finding[] {
  const every = member(watch, "every");
  const found = [
    ...entries(member(watch, "by")).flatMap((by) => resolve("crew-member", by)),
    ...resolve("step", member(watch, "from")),
    ...resolve("step", member(watch, "until")),
  ];
  if (parseDuration(textOf(every) ?? "PT1S") === 0)
    found.push(errorAt(every, "file/wrong-value", message("file/watch-at-once")));
  return found;
}

/** The errors in the spans of a window: none for a listed window, or a span that ends before it starts. */
function spanFindings(window: RawPart): Finding[] {
  const spans = member(window, "spans");
  const things = [idOf(window) ?? ""];
  const found: Finding[] = [];
  if (textOf(member(window, "kind")) === "listed" && spans.value === undefined)
    found.push(errorAt(window, "window/no-spans", message("window/no-spans"), { things }));
  for (const span of entries(spans)) {
    const [from, to] = [textOf(member(span, "from")), textOf(member(span, "to"))];
    if (from === null || to === null) continue;
    const [start, end] = [parseDuration(from) ?? Date.parse(from), parseDuration(to) ?? Date.parse(to)];
    const isMixed = (parseDuration(from) === null) !== (parseDuration(to) === null);
    if (!isMixed && start >= end)
      found.push(errorAt(span, "window/empty-span", message("window/empty-span"), { things }));
  }
  return found;
}
