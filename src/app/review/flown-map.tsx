import { memo, useMemo, useState } from "react";
import type { Duration, Instant } from "../../core/units/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { flownCourseOf, walkStateAt } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { MapAtMoment, TouchedMoment } from "../worksite/index.ts";

interface FlownMapProps {
  readonly ledger: Ledger;
  readonly at: Instant;
  /** The PET that the reader came for; `null` for none. */
  readonly sought: Duration | null;
}

/** The map of a walk as it was flown up to an instant, with what was planned for the same PET as a ghost ([MAP5]). */
export const FlownMap = memo(function FlownMap({ ledger, at, sought }: FlownMapProps) {
  const [moment] = useState(() => new TouchedMoment(sought));
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
        moment={moment}
        now={null}
        onKeepLayout={null}
        isOpened={sought !== null}
      />
      {courses.planned && <p className="hint">{words("map/ghost")}</p>}
    </section>
  );
});
