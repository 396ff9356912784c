import { words } from "../../words/index.ts";
import { PrintedBox } from "../print/index.ts";
import type { CardRow } from "./card-rows.ts";

/** The rows that are a text of the author and nothing else: they run in its direction. */
const OWN_TEXT: ReadonlySet<CardRow["kind"]> = new Set(["do", "alert", "ask"]);

/** A row of a wrist card as printed. */
export function CardRowView({ row: { kind, text, isFirst, isLast, level } }: { readonly row: CardRow }) {
  return (
    <p
      className={`card-row card-${kind}`}
      data-level={level ?? undefined}
      data-rest={isFirst ? undefined : ""}
    >
      {kind === "tick" && (isFirst ? <PrintedBox /> : <span className="card-indent" />)}
      {level !== null && isFirst && <b className="card-level">{words(`parts/alert-${level}`)}</b>}
      <span className="card-text" dir={OWN_TEXT.has(kind) ? "auto" : undefined}>
        {text}
      </span>
      {kind === "record" && isLast && <span className="card-blank" />}
    </p>
  );
}
