import type { Entry } from "../log/index.ts";
import { compareEntries, jsonOf } from "../log/index.ts";
import type { Instant } from "../units/index.ts";
import { revisionHash } from "./revision-hash.ts";

/** A revision of a procedure in a library. It never changes. */
export interface KeptRevision {
  /** What names it: the hash of its text. */
  readonly hash: string;
  /** The file as it was kept, byte for byte. */
  readonly text: string;
  readonly id: string;
  readonly title: string;
  readonly revision: string | null;
  /** Who kept it, and why, in their own words. */
  readonly by: string;
  readonly why: string;
  readonly at: Instant;
  /** The revisions here that it was made from. */
  readonly bases: readonly string[];
}

/** Two revisions of which neither was made from the other. */
export interface RevisionsApart {
  readonly one: KeptRevision;
  readonly other: KeptRevision;
  /** The latest revision that both were made from; `null` where there is none here. */
  readonly base: KeptRevision | null;
}

/** A procedure in a library. */
export interface LibraryProcedure {
  readonly id: string;
  /** As its latest revision has it. */
  readonly title: string;
  /** In the order in which they were kept. */
  readonly revisions: readonly KeptRevision[];
  /** Those from which nothing else was made: one, unless several planners went on from the same. */
  readonly heads: readonly KeptRevision[];
  /** The first two heads, while there are several. */
  readonly apart: RevisionsApart | null;
}

/** What the log of a library comes to. */
export interface Library {
  /** By title. */
  readonly procedures: readonly LibraryProcedure[];
  /** How many entries hold no procedure that can be named. */
  readonly unreadable: number;
}

/**
 * What the entries of a library come to, whatever the order they came in. Nothing in it is ever replaced: a text that is kept again is the first one still, and
 * two that went on from one revision stand beside one another until a third is made from both. A base counts only where it stands before what was made from it.
 */
export function libraryOf(entries: readonly Entry[]): Library {
  const byProcedure = new Map<string, KeptRevision[]>();
  const known = new Map<string, KeptRevision>();
  let unreadable = 0;
  for (const entry of entries.toSorted(compareEntries)) {
    const { fact } = entry.read;
    if (fact?.name !== "revision.kept") continue;
    const head = headOf(fact.text);
    if (!head) {
      unreadable += 1;
      continue;
    }
    const hash = revisionHash(fact.text);
    if (known.has(hash)) continue;
    const kept: KeptRevision = {
      ...head,
      hash,
      text: fact.text,
      by: String(entry.wire["actor"] ?? ""),
      why: fact.why,
      at: entry.at,
      bases: fact.bases.filter((base) => known.get(base)?.id === head.id),
    };
    known.set(hash, kept);
    const others = byProcedure.get(head.id) ?? [];
    byProcedure.set(head.id, others);
    others.push(kept);
  }
  const procedures = [...byProcedure].map(([id, revisions]) => procedureOf(id, revisions));
  return {
    procedures: procedures.sort((a, b) => a.title.localeCompare(b.title, "en") || (a.id < b.id ? -1 : 1)),
    unreadable,
  };
}

function procedureOf(id: string, revisions: readonly KeptRevision[]): LibraryProcedure {
  const goneOnFrom = new Set(revisions.flatMap(({ bases }) => bases));
  const heads = revisions.filter(({ hash }) => !goneOnFrom.has(hash));
  const [one, other] = heads;
  return {
    id,
    title: revisions.at(-1)?.title ?? id,
    revisions,
    heads,
    apart: one && other ? { one, other, base: commonBase(revisions, one, other) } : null,
  };
}

/** The latest revision that both were made from, at however many removes. */
function commonBase(
  revisions: readonly KeptRevision[],
  one: KeptRevision,
  other: KeptRevision,
): KeptRevision | null {
  const [ofOne, ofOther] = [basesOf(revisions, one), basesOf(revisions, other)];
  return revisions.findLast(({ hash }) => ofOne.has(hash) && ofOther.has(hash)) ?? null;
}

function basesOf(revisions: readonly KeptRevision[], of: KeptRevision): ReadonlySet<string> {
  const byHash = new Map(revisions.map((one) => [one.hash, one]));
  const found = new Set<string>();
  const left = [...of.bases];
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    if (found.has(next)) continue;
    found.add(next);
    left.push(...(byHash.get(next)?.bases ?? []));
  }
  return found;
}

/** What names a procedure in its text; `null` where there is nothing that could. It is read as a procedure by whoever takes it. */
function headOf(text: string): Pick<KeptRevision, "id" | "title" | "revision"> | null {
  const file = jsonOf(text);
  if (typeof file !== "object" || file === null) return null;
  const { id, title, revision } = file as Readonly<Record<string, unknown>>;
  if (typeof id !== "string" || id === "") return null;
  return {
    id,
    title: typeof title === "string" && title.trim() !== "" ? title : id,
    revision: typeof revision === "string" && revision !== "" ? revision : null,
  };
}
