import { words } from "../../words/index.ts";
import type { ShelfRevision } from "../shelf/index.ts";

/** What a revision is called where it stands beside others: by who saved it and when too, where another one has its title and revision. */
export function revisionName(one: ShelfRevision, all: readonly ShelfRevision[]): string {
  const { title, revision, at, saved } = one;
  const isDoubled = all.some(
    (other) => other.key !== one.key && other.title === title && other.revision === revision,
  );
  if (isDoubled && at !== null) {
    if (revision !== null && saved)
      return words("compare/revision-by", { title, revision, at, who: saved.by });
    return revision === null
      ? words("compare/no-revision-at", { title, at })
      : words("compare/revision-at", { title, revision, at });
  }
  return revision === null
    ? words("compare/no-revision", { title })
    : words("compare/revision", { title, revision });
}
