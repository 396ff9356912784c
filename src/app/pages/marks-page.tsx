import { useMemo } from "react";
import { checkProcedureText } from "../../core/check/index.ts";
import { planOf } from "../../core/plan/index.ts";
import { words } from "../../words/index.ts";
import { MarksView } from "../marks/index.ts";
import { useProcedureText } from "../shelf/index.ts";
import { markedInText, useTexts } from "../texts/index.ts";
import { ScreenPage } from "./screen-page.tsx";

/** Bundled, small, and with two people outside: its worksite is drawn as a sample. */
const SAMPLE = "example-practice";

/** The page with every mark and what it means. */
export function MarksPage() {
  const { text } = useProcedureText(SAMPLE);
  const written = useMemo(() => (text === null ? null : checkProcedureText(text).outline), [text]);
  const texts = useTexts(written, markedInText);
  const outline = texts?.outline ?? null;
  const sample = useMemo(
    () => outline && (planOf(outline, { start: null, light: null }).timeline?.course ?? null),
    [outline],
  );
  return (
    <ScreenPage screen="marks" title={words("marks/title")} what={words("marks/what")} to={[]} texts={texts}>
      <MarksView sample={sample} />
    </ScreenPage>
  );
}
