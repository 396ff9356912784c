import type { Outline } from "../../core/procedure/index.ts";
import type { FoldedComment, Remark } from "../../core/remarks/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { parseInstant } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { aboutWords } from "./about-words.ts";

interface CommentListProps {
  readonly outline: Outline;
  readonly comments: readonly FoldedComment[];
  /** True once it is known who answers. */
  readonly mayAnswer: boolean;
  readonly onResolve: (comment: Remark) => void;
  readonly onReopen: (resolvings: readonly Remark[]) => void;
}

/** The comments of a procedure, the open ones first. */
export function CommentList({ outline, comments, mayAnswer, onResolve, onReopen }: CommentListProps) {
  const open = comments.filter(({ resolvedBy }) => resolvedBy.length === 0);
  const resolved = comments.filter(({ resolvedBy }) => resolvedBy.length > 0);
  return (
    <>
      <h3>{words("remarks/open-comments")}</h3>
      {open.length === 0 && <p className="hint">{words("remarks/no-open")}</p>}
      <ul className="plain-list remarks-list">
        {open.map(({ comment }) => (
          <li key={comment.id}>
            <CommentText outline={outline} comment={comment} />
            <button
              type="button"
              className="plain-button"
              disabled={!mayAnswer}
              aria-label={words("remarks/resolve-whose", { says: comment.says })}
              onClick={() => onResolve(comment)}
            >
              {words("remarks/resolve")}
            </button>
          </li>
        ))}
      </ul>
      {resolved.length > 0 && (
        <details className="remarks-resolved">
          <summary>{words("remarks/resolved-comments")}</summary>
          <ul className="plain-list remarks-list">
            {resolved.map(({ comment, resolvedBy }) => (
              <li key={comment.id}>
                <CommentText outline={outline} comment={comment} />
                <p className="hint">
                  {words("remarks/resolved-by", { names: resolvedBy.map(({ by }) => by.name) })}
                </p>
                <button
                  type="button"
                  className="plain-button"
                  disabled={!mayAnswer}
                  aria-label={words("remarks/reopen-whose", { says: comment.says })}
                  onClick={() => onReopen(resolvedBy)}
                >
                  {words("remarks/reopen")}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

function CommentText({ outline, comment }: { readonly outline: Outline; readonly comment: Remark }) {
  const { by, says, at, revision } = comment;
  return (
    <div>
      <p className="remarks-about">{aboutWords(outline, comment)}</p>
      <p>{words("remarks/open", { name: by.name, role: by.role, says })}</p>
      <p className="hint">
        {words("remarks/of-revision", { at: parseInstant(at) ?? (0 as Instant), revision: revision ?? "–" })}
      </p>
    </div>
  );
}
