import type { MergedRemarks } from "./merge-remarks.ts";
import { mergeRemarks } from "./merge-remarks.ts";
import type { Remark } from "./remark.ts";

/** A comment, and the remarks that resolve it and stand. */
export interface FoldedComment {
  readonly comment: Remark;
  /** None while it is open. */
  readonly resolvedBy: readonly Remark[];
}

/** An agreement that nobody took back. */
export interface FoldedAgreement {
  readonly agreement: Remark;
  /** True when it was given to the very text at hand. */
  readonly holds: boolean;
}

/** What the remarks about a procedure come to. */
export interface FoldedRemarks {
  /** Open ones first, each kind by their times. */
  readonly comments: readonly FoldedComment[];
  /** Those that hold first. */
  readonly agreements: readonly FoldedAgreement[];
  /** Remarks without effect: they name what is not there, or take back what is another person's. */
  readonly idle: readonly Remark[];
  /** Remarks that have an id in common and differ: none of them counts. */
  readonly conflicting: readonly Remark[];
}

/**
 * Folds the remarks about a procedure, in whatever order they came ([WRT10]). `text` is the digest of the text at hand; with `null`
 * no agreement holds.
 */
export function foldRemarks(all: readonly Remark[], procedure: string, text: string | null): FoldedRemarks {
  const { remarks, conflicting }: MergedRemarks = mergeRemarks(
    all.filter((remark) => remark.procedure === procedure),
  );
  const byId = new Map(remarks.map((remark) => [remark.id, remark]));
  const named = (remark: Remark, kind: Remark["kind"]) => {
    const other = byId.get(remark.to ?? "");
    return other?.kind === kind ? other : null;
  };
  const of = (kind: Remark["kind"]) => remarks.filter((remark) => remark.kind === kind);
  const reopened = new Set(of("reopened").flatMap((remark) => named(remark, "resolved")?.id ?? []));
  const withdrawn = new Set(
    of("withdrawn").flatMap((remark) => {
      const agreement = named(remark, "agreed");
      return agreement && isSamePerson(agreement, remark) ? [agreement.id] : [];
    }),
  );
  const resolvings = new Map<string, Remark[]>();
  for (const remark of of("resolved")) {
    if (reopened.has(remark.id)) continue;
    const known = resolvings.get(remark.to ?? "") ?? [];
    resolvings.set(remark.to ?? "", [...known, remark]);
  }
  const comments = of("comment").map((comment) => ({
    comment,
    resolvedBy: resolvings.get(comment.id) ?? [],
  }));
  const agreements = of("agreed")
    .filter(({ id }) => !withdrawn.has(id))
    .map((agreement) => ({ agreement, holds: text !== null && agreement.text === text }));
  const idle = remarks.filter((remark) => {
    if (remark.kind === "resolved") return named(remark, "comment") === null;
    if (remark.kind === "reopened") return named(remark, "resolved") === null;
    return remark.kind === "withdrawn" && !withdrawn.has(remark.to ?? "");
  });
  return {
    comments: [
      ...comments.filter(({ resolvedBy }) => resolvedBy.length === 0),
      ...comments.filter(({ resolvedBy }) => resolvedBy.length > 0),
    ],
    agreements: [...agreements.filter(({ holds }) => holds), ...agreements.filter(({ holds }) => !holds)],
    idle,
    conflicting,
  };
}

const isSamePerson = (one: Remark, other: Remark) =>
  one.by.name === other.by.name && one.by.role === other.by.role;
