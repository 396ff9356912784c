import { message } from "../../words/index.ts";
import { errorAt } from "./error-at.ts";
import type { Finding, PatchOperation } from "./finding.ts";
import { jsonPointer } from "./json-pointer.ts";
import { canonicalTag } from "./language-tag.ts";
import type { RawPart } from "./raw-file.ts";
import { member, members, textOf } from "./raw-file.ts";

/** An error for each language of a file that is no BCP 47 tag in its usual form ([WRD4]). */
export function languageFindings(root: RawPart): Finding[] {
  const own = member(root, "language");
  const tag = textOf(own);
  const words = member(root, "words");
  const tags = members(words).map(([key]) => key);
  return [
    ...(tag === null
      ? []
      : tagFindings(own, tag, (to) => [{ op: "replace", path: jsonPointer(own.path), value: to }])),
    ...members(words).flatMap(([key, part]) =>
      tagFindings(part, key, (to) =>
        tags.includes(to)
          ? null
          : [{ op: "move", from: jsonPointer(part.path), path: jsonPointer([...words.path, to]) }],
      ),
    ),
  ];
}

function tagFindings(
  part: RawPart,
  tag: string,
  repairTo: (meant: string) => readonly PatchOperation[] | null,
): Finding[] {
  const meant = canonicalTag(tag);
  if (meant === tag) return [];
  const shown = tag.slice(0, 60);
  const said =
    meant === null
      ? message("file/no-language", { tag: shown })
      : message("file/no-language-meant", { tag: shown, meant });
  return [
    errorAt(part, "file/no-language", said, {
      things: [tag],
      repair: meant === null ? null : repairTo(meant),
    }),
  ];
}
