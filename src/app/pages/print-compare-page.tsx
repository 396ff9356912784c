import { useMemo, useState } from "react";
import { lightFrom, planOf } from "../../core/plan/index.ts";
import { words } from "../../words/index.ts";
import type { Choice } from "../compare/index.ts";
import {
  ChangeList,
  changedInWords,
  differenceOf,
  droppedPlaces,
  firstOf,
  useCompared,
} from "../compare/index.ts";
import { useProcedureLight } from "../light/index.ts";
import { DroppedRow, PrintSheet } from "../print/index.ts";
import { startInQuery, useServices } from "../session/index.ts";
import { useShelfRevisions } from "../shelf/index.ts";

/**
 * The printable page of a revision with a bar beside each step that changed since another one, and what changed before it ([WRT8]).
 * The document is outside Ionic's pages, so that it prints in full.
 */
export function PrintComparePage({ after: afterKey }: { readonly after: string }) {
  const { now } = useServices();
  const [printedAt] = useState(now);
  const [query] = useState(() => window.location.search);
  const beforeKey = new URLSearchParams(query).get("before") ?? "";
  const all = useShelfRevisions();
  const { choice: lightChoice, start: ownStart } = useProcedureLight(
    all?.find(({ key }) => key === afterKey)?.id ?? null,
  );
  const start = startInQuery(query) ?? ownStart;
  const options = useMemo(
    () => ({ start, light: lightChoice && start !== null ? lightFrom(lightChoice, start) : null }),
    [start, lightChoice],
  );
  const before = useCompared(beforeKey, options);
  const after = useCompared(afterKey, options);
  const old = useMemo(() => fileOf(before), [before]);
  const next = useMemo(() => fileOf(after), [after]);
  const difference = useMemo(() => (old && next ? differenceOf(old.file, next.file) : null), [old, next]);
  const gone = useMemo(() => difference && droppedPlaces(difference), [difference]);
  const plan = useMemo(() => (next ? planOf(next.outline, options) : null), [next, options]);
  if (!old || !next || !difference || !plan) {
    return (
      <main className="page-message" role="status">
        <p>
          {before === "opening" || after === "opening"
            ? words("parts/opening-procedure")
            : words("compare/is-gone")}
        </p>
      </main>
    );
  }
  return (
    <PrintSheet
      outline={next.outline}
      plan={plan}
      findings={next.findings}
      printedAt={printedAt}
      changed={changedInWords(difference)}
      dropped={(place) =>
        gone
          ?.get("step" in place ? place.step : firstOf(place.firstOf))
          ?.map(({ id, calls, action }) => <DroppedRow key={id} calls={calls} action={action} />)
      }
    >
      <section className="print-changes">
        <h2>{words("compare/printed-changes", { name: old.name })}</h2>
        {difference.changes.length === 0 ? (
          <p>{words("compare/same")}</p>
        ) : (
          <>
            <p>{words("compare/printed-bars")}</p>
            <ChangeList difference={difference} />
          </>
        )}
      </section>
    </PrintSheet>
  );
}

function fileOf(choice: Choice) {
  if (typeof choice !== "object" || choice === null) return null;
  const { file, outline, findings } = choice.checked;
  return file && outline ? { name: choice.name, file, outline, findings } : null;
}
