import { inWords, words } from "../../words/index.ts";
import type { OpenManuscript } from "./use-manuscript.ts";
import { keepingTrouble } from "./use-manuscript.ts";

/** Whether what is written is on the device, and what another page did. */
export function Notices({ open, saved }: { readonly open: OpenManuscript; readonly saved: string | null }) {
  const { keeping } = open;
  const trouble = keepingTrouble(keeping);
  return (
    <div className="write-notices">
      <p role="status">
        {saved ??
          words(
            keeping.kind === "kept"
              ? "write/kept"
              : keeping.kind === "keeping"
                ? "write/keeping"
                : "write/not-kept",
          )}
      </p>
      {keeping.kind === "not-kept" && (
        <p role="alert">
          {trouble && inWords(trouble)} {words("write/not-kept-do")}
        </p>
      )}
      {keeping.kind === "overtaken" && (
        <div role="alert" className="write-overtaken">
          <p>{words("write/overtaken")}</p>
          <div className="panel-acts">
            <button type="button" className="plain-button" onClick={() => open.decide("theirs")}>
              {words("write/take-theirs")}
            </button>
            <button type="button" className="plain-button" onClick={() => open.decide("mine")}>
              {words("write/keep-mine")}
            </button>
          </div>
        </div>
      )}
      {open.manuscript.unread !== null && <p role="status">{words("write/unread")}</p>}
    </div>
  );
}
