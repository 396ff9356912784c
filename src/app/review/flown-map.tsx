import { useMemo, useState } from "react";
import type { Duration, Instant } from "../../core/units/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { flownCourseOf, walkStateAt } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { MapAtMoment } from "../worksite/index.ts";

/** The map of a walk as it was flown up to an instant, with what was planned for the same PET as a ghost ([MAP5]). */
export function FlownMap({ ledger, at }: { readonly ledger: Ledger; readonly at: Instant }) {
  const [touched, setTouched] = useState<Duration | null>(null);
  const courses = useMemo(
    () => ({
      flown: flownCourseOf(ledger, at),
      planned: walkStateAt(ledger, at).plan.timeline?.course ?? null,
    }),
    [ledger, at],
  );
  return (
    <section>
      <MapAtMoment
        course={courses.flown}
        planned={courses.planned}
        touched={touched}
        now={null}
        onTouch={setTouched}
        onKeepLayout={null}
      />
      {courses.planned && <p className="hint">{words("map/ghost")}</p>}
    </section>
  );
}
