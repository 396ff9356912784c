import { inWords, words } from "../../words/index.ts";
import type { HalfTypedHere } from "./use-half-typed.ts";
import type { OpenManuscript } from "./use-manuscript.ts";
import { keepingTrouble } from "./use-manuscript.ts";

/** Whether what is written is on the device, what another page did, and what was being typed when the page ended. */
export function Notices({
  open,
  saved,
  halfTyped: { found, letGo },
}: {
  readonly open: OpenManuscript;
  readonly saved: string | null;
  readonly halfTyped: HalfTypedHere;
}) {
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
      {found && (
        <div role="status" className="write-overtaken">
          <p>{words("write/half-typed", { field: found.field })}</p>
          <p className="write-half-typed">{found.text}</p>
          <div className="panel-acts">
            {navigator.clipboard && (
              <button
                type="button"
                className="plain-button"
                onClick={() => void navigator.clipboard.writeText(found.text)}
              >
                {words("write/copy-half-typed")}
              </button>
            )}
            <button type="button" className="plain-button" onClick={letGo}>
              {words("write/let-half-typed-go")}
            </button>
          </div>
        </div>
      )}
      {open.manuscript.unread !== null && <p role="status">{words("write/unread")}</p>}
    </div>
  );
}
