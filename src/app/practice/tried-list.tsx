import type { Practised } from "../../core/practice/index.ts";
import { practisedOf } from "../../core/practice/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
// What was tried is drawn as beads of a strand are: full when it is done.
import "../braid/index.ts";

const PARTS = [
  "tap",
  "joint",
  "value",
  "contingency",
  "close",
] as const satisfies readonly (keyof Practised)[];

/** What was tried of a practice walk so far, and what there is still to try ([PRA5]). */
export function TriedList({ ledger }: { readonly ledger: Ledger }) {
  const practised = practisedOf(ledger);
  const count = PARTS.filter((part) => practised[part]).length;
  return (
    <div className="practice-tried">
      <p>{words("practice/tried", { count, all: PARTS.length })}</p>
      <ul>
        {PARTS.map((part) => (
          <li key={part}>
            <TriedMark isKnot={part === "joint"} isTried={practised[part]} />
            {words(`practice/tried-${part}`)}
            <span className="heard-only">
              {" "}
              {words(practised[part] ? "practice/is-tried" : "practice/not-tried")}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** A bead, or a knot for what is done together: full when it was tried. */
function TriedMark({ isKnot, isTried }: { readonly isKnot: boolean; readonly isTried: boolean }) {
  const stage = isTried ? "done" : "later";
  return (
    <svg aria-hidden="true" width="28" height="20" viewBox="0 0 28 20">
      <path className="braid-strand" style={{ stroke: "var(--lane-1)" }} d="M0 10H28" />
      {isKnot ? (
        <rect className="braid-knot" data-stage={stage} x={4} y={3} width={20} height={14} rx={7} />
      ) : (
        <circle
          className="braid-bead"
          data-stage={stage}
          style={{ stroke: "var(--lane-1)", color: "var(--lane-1)" }}
          cx={14}
          cy={10}
          r={5}
        />
      )}
    </svg>
  );
}
