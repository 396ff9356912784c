import { useMemo } from "react";
import type { Briefing, BriefingKind } from "../../core/briefing/index.ts";
import { briefingOf } from "../../core/briefing/index.ts";
import { checkProcedureText } from "../../core/check/index.ts";
import { lightFrom, planOf } from "../../core/plan/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { later } from "../../core/units/index.ts";
import { flownCourseOf } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { useProcedureLight } from "../light/index.ts";
import { useMissingWalk } from "../link/index.ts";
import { ownClockOffset, useServices, useWalkSession } from "../session/index.ts";
import { useProcedureText } from "../shelf/index.ts";
import { markedInText, useLedgerTexts, useTexts } from "../texts/index.ts";

/** What there is to be briefed, or why there is nothing. */
export interface Briefed {
  readonly title: string | null;
  readonly briefing: Briefing | null;
  readonly kind: BriefingKind;
  /** A sentence while there is no briefing. */
  readonly told: string | null;
}

/** The briefing of a procedure of this device as it is planned from a start. */
export function useBriefedPlan(procedure: string, start: Instant | null): Briefed {
  const { id, text, isRead } = useProcedureText(procedure);
  const { choice } = useProcedureLight(id);
  const written = useMemo(() => (text === null ? null : checkProcedureText(text).outline), [text]);
  const outline = useTexts(written, markedInText)?.outline ?? null;
  const plan = useMemo(
    () =>
      outline &&
      planOf(outline, { start, light: choice && start !== null ? lightFrom(choice, start) : null }),
    [outline, start, choice],
  );
  const briefing = useMemo(
    () => (plan?.timeline ? briefingOf(plan.timeline.course, plan.start) : null),
    [plan],
  );
  const told = isRead
    ? words(text === null ? "parts/no-such-procedure" : "brief/no-plan")
    : words("parts/opening-procedure");
  return {
    title: plan?.outline.procedure.title ?? null,
    briefing,
    kind: "plan",
    told: briefing ? null : told,
  };
}

/** The briefing of a walk of this device as far as it was flown or played. */
export function useBriefedWalk(walk: WalkId): Briefed {
  const { now, store } = useServices();
  const { folded, isRead, problem } = useWalkSession(walk);
  const { lastAt } = folded;
  const { ledger } = useLedgerTexts(folded.ledger, markedInText);
  const { said } = useMissingWalk({ walk, isRead, problem, isThere: ledger !== null });
  const briefing = useMemo(() => {
    if (!ledger) return null;
    const isLive = ledger.opened.mode === "live" && ledger.phase !== "closed";
    const at = isLive ? later(now(), ownClockOffset(folded, store.device)) : (lastAt ?? ledger.opened.at);
    const course = flownCourseOf(ledger, at);
    return course.steps.size > 0 ? briefingOf(course, ledger.petZero) : null;
  }, [ledger, lastAt, folded, now, store.device]);
  return {
    title: ledger?.inForce.outline.procedure.title ?? null,
    briefing,
    kind: ledger?.opened.mode === "rehearsal" ? "rehearsal" : "flown",
    told: briefing ? null : ledger ? words("brief/nothing-done") : said,
  };
}
