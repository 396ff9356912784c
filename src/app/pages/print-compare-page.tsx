import { useMemo, useState } from "react";
import type { CheckOptions } from "../../core/check/index.ts";
import { lightFrom, planOf } from "../../core/plan/index.ts";
import type { Finding, Outline, ProcedureFile } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { Choice } from "../compare/index.ts";
import {
  ChangeList,
  changedInWords,
  differenceOf,
  droppedPlaces,
  firstOf,
  useBothInTexts,
  useCompared,
} from "../compare/index.ts";
import { useProcedureLight } from "../light/index.ts";
import { DroppedRow, PrintSheet } from "../print/index.ts";
import { startInQuery, useServices } from "../session/index.ts";
import { useShelfRevisions } from "../shelf/index.ts";
import { TextsContext, useTexts } from "../texts/index.ts";

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
  const texts = useTexts(next?.outline ?? null, null, old?.outline ?? null);
  if (!old || !next) {
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
    <TextsContext value={texts}>
      <ComparedSheet
        old={old}
        next={next}
        outline={texts?.outline ?? next.outline}
        options={options}
        printedAt={printedAt}
      />
    </TextsContext>
  );
}

interface ComparedSheetProps {
  readonly old: ComparedFile;
  readonly next: ComparedFile;
  /** The later procedure with the texts that are shown, each with its mark beside it. */
  readonly outline: Outline;
  readonly options: CheckOptions;
  readonly printedAt: Instant;
}

function ComparedSheet({ old, next, outline, options, printedAt }: ComparedSheetProps) {
  const shown = useBothInTexts(old.outline, next.outline);
  const difference = useMemo(() => differenceOf(old.file, next.file), [old, next]);
  const gone = useMemo(() => droppedPlaces(difference, shown.before.procedure), [difference, shown]);
  const plan = useMemo(() => planOf(outline, options), [outline, options]);
  return (
    <PrintSheet
      outline={outline}
      plan={plan}
      findings={next.findings}
      printedAt={printedAt}
      changed={changedInWords(difference)}
      dropped={(place) =>
        gone
          .get("step" in place ? place.step : firstOf(place.firstOf))
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
            <ChangeList difference={difference} shown={shown} />
          </>
        )}
      </section>
    </PrintSheet>
  );
}

interface ComparedFile {
  readonly name: string;
  readonly file: ProcedureFile;
  readonly outline: Outline;
  readonly findings: readonly Finding[];
}

function fileOf(choice: Choice): ComparedFile | null {
  if (typeof choice !== "object" || choice === null) return null;
  const { file, outline, findings } = choice.checked;
  return file && outline ? { name: choice.name, file, outline, findings } : null;
}
