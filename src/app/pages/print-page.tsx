import { lazy, Suspense, useMemo, useState } from "react";
import { checkProcedureText } from "../../core/check/index.ts";
import { lightFrom, planOf } from "../../core/plan/index.ts";
import { words } from "../../words/index.ts";
import { useProcedureLight } from "../light/index.ts";
import { PrintSheet } from "../print/index.ts";
import { FindingsOfUnreadable } from "../read/index.ts";
import { startInQuery, useServices } from "../session/index.ts";
import { useProcedureText } from "../shelf/index.ts";
import { markedInText, TextsContext, useTexts } from "../texts/index.ts";

const WristCards = lazy(async () => ({ default: (await import("../cards/index.ts")).WristCards }));

const Poster = lazy(async () => ({ default: (await import("../poster/index.ts")).Poster }));

interface PrintPageProps {
  readonly procedure: string;
  /** The whole procedure, the cards that its crew outside wears, or its timeline on one large sheet. */
  readonly as: "print" | "cards" | "poster";
}

/** A printable page of a procedure. The document is outside Ionic's pages, so that it prints in full. */
export function PrintPage({ procedure, as }: PrintPageProps) {
  const { now } = useServices();
  const { id, text, isRead } = useProcedureText(procedure);
  const { choice } = useProcedureLight(id);
  const [printedAt] = useState(now);
  const [start] = useState(() => startInQuery(window.location.search));
  const options = useMemo(
    () => ({ start, light: choice && start !== null ? lightFrom(choice, start) : null }),
    [start, choice],
  );
  const checked = useMemo(() => (text === null ? null : checkProcedureText(text, options)), [text, options]);
  // A sheet has room for marks beside its texts; cards and the poster have them within.
  const texts = useTexts(checked?.outline ?? null, as === "print" ? null : markedInText);
  const outline = texts?.outline ?? null;
  const plan = useMemo(() => (outline ? planOf(outline, options) : null), [outline, options]);
  if (checked && outline && plan) {
    if (as === "cards") {
      return (
        <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
          <WristCards outline={outline} course={plan.timeline?.course ?? null} printedAt={printedAt} />
        </Suspense>
      );
    }
    if (as === "poster") {
      return (
        <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
          <Poster plan={plan} printedAt={printedAt} />
        </Suspense>
      );
    }
    return (
      <TextsContext value={texts}>
        <PrintSheet outline={outline} plan={plan} findings={checked.findings} printedAt={printedAt} />
      </TextsContext>
    );
  }
  return (
    <main className="page-message" role="status">
      {checked && <FindingsOfUnreadable findings={checked.findings} />}
      {!checked && <p>{isRead ? words("parts/no-such-procedure") : words("parts/opening-procedure")}</p>}
    </main>
  );
}
