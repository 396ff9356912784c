import { useMemo } from "react";
import { checkProcedureText } from "../../core/check/index.ts";
import { planOf } from "../../core/plan/index.ts";
import { words } from "../../words/index.ts";
import { MarksView } from "../marks/index.ts";
import { useProcedureText } from "../shelf/index.ts";
import { ScreenPage } from "./screen-page.tsx";

/** Bundled, small, and with two people outside: its worksite is drawn as a sample. */
const SAMPLE = "example-practice";

/** The page with every mark and what it means. */
export function MarksPage() {
  const { text } = useProcedureText(SAMPLE);
  const sample = useMemo(() => {
    const outline = text === null ? null : checkProcedureText(text).outline;
    return outline ? (planOf(outline, { start: null, light: null }).timeline?.course ?? null) : null;
  }, [text]);
  return (
    <ScreenPage screen="marks" title={words("marks/title")} what={words("marks/what")} to={[]}>
      <MarksView sample={sample} />
    </ScreenPage>
  );
}
