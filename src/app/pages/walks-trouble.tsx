import type { checkProcedureText } from "../../core/check/index.ts";
import type { Told } from "../learn/index.ts";
import { FindingsOfUnreadable } from "../read/index.ts";
import { pageWords } from "./walks-page-words.ts";

interface WalksTroubleProps {
  /** The procedure as it was read; `null` where there is none. */
  readonly read: ReturnType<typeof checkProcedureText> | null;
  /** False until the shelf has been read once. */
  readonly isRead: boolean;
  readonly told: Told;
}

/** What a page about the walks of a procedure says while it has nothing to show. */
export function WalksTrouble({ read, isRead, told }: WalksTroubleProps) {
  return (
    <div className="page-message" role="status">
      {read && !read.outline && <FindingsOfUnreadable findings={read.findings} />}
      <p>{pageWords(read !== null, read?.outline != null, isRead, told)}</p>
    </div>
  );
}
