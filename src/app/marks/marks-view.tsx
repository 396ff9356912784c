import type { ReactNode } from "react";
import type { Course } from "../../core/course/index.ts";
import type { AlertLevel, AmendedHow } from "../../core/walk/index.ts";
import type { Message } from "../../words/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { BraidSample } from "../braid/index.ts";
import { AlertMark, AmendedTag, NoteMark } from "../follow/index.ts";
import { StripLegend } from "../learn/index.ts";
import { AlertBox } from "../parts/index.ts";
import { TimelineLegend } from "../timeline/index.ts";
import { SiteFigure } from "../worksite/index.ts";
import "./marks.css";

const ALERTS = ["warning", "caution", "note"] as const;

const LEVELS = {
  "act-now": message("guide/follow-act-now"),
  "look-soon": message("guide/follow-look-soon"),
  know: message("guide/follow-know"),
} satisfies Record<AlertLevel, Message>;

/** Every way in which an amendment touches a step, so that the compiler names one that lacks. */
const AMENDED = {
  added: null,
  brought: null,
  dropped: null,
  reassigned: null,
  moved: null,
  changed: null,
} satisfies Record<AmendedHow, null>;

interface MarksViewProps {
  /** A plan whose worksite is drawn as a sample of the map; `null` while there is none. */
  readonly sample: Course | null;
}

/** Every mark that the app draws, by what draws it on its screen, with what it means ([HLP2]). */
export function MarksView({ sample }: MarksViewProps) {
  return (
    <div className="marks">
      <Marks title={words("marks/braid")}>
        <Mark mark={<BraidSample name="strand" />} means={message("guide/strand")} />
        <Mark mark={<BraidSample name="bead" />} means={message("guide/bead")} />
        <Mark mark={<BraidSample name="knot" />} means={message("guide/knot")} />
        <Mark mark={<BraidSample name="perhaps" />} means={message("guide/perhaps")} />
        <Mark mark={<BraidSample name="marker" />} means={message("guide/follow-marker")} />
        <Mark mark={<BraidSample name="slack" />} means={message("guide/follow-slack")} />
      </Marks>
      <Marks title={words("marks/step")}>
        <Mark
          mark={ALERTS.map((level) => (
            <AlertBox key={level} level={level}>
              {null}
            </AlertBox>
          ))}
          means={message("guide/alert-words")}
        />
        <Mark
          mark={(Object.keys(AMENDED) as AmendedHow[]).map((how) => <AmendedTag key={how} how={how} />)}
          means={message("marks/amended")}
        />
        <Mark mark={<NoteMark count={2} />} means={message("marks/notes")} />
        <Mark mark={null} means={message("guide/follow-owed")} />
        <Mark mark={null} means={message("guide/follow-times")} />
      </Marks>
      <Marks title={words("marks/alerts")}>
        {(Object.keys(LEVELS) as AlertLevel[]).map((level) => (
          <Mark key={level} mark={<AlertMark level={level} />} means={LEVELS[level]} />
        ))}
      </Marks>
      <Marks title={words("parts/timeline")}>
        <Mark mark={null} means={message("guide/timeline-lanes")} />
        <Mark mark={null} means={message("guide/timeline-waits")} />
        <Mark mark={null} means={message("guide/timeline-now")} />
      </Marks>
      <TimelineLegend live hasWaits hasJoint hasBand />
      <Marks title={words("map/title")}>
        <Mark mark={null} means={message("guide/map-places")} />
        <Mark mark={null} means={message("guide/map-people")} />
        <Mark mark={null} means={message("guide/map-lines")} />
        <Mark mark={null} means={message("guide/map-shared")} />
        <Mark mark={null} means={message("guide/map-home")} />
        <Mark mark={null} means={message("guide/map-light")} />
        <Mark mark={null} means={message("guide/map-crowded")} />
      </Marks>
      {sample && <SiteFigure course={sample} />}
      <Marks title={words("learn/title")}>
        <Mark mark={null} means={message("guide/learn-marks")} />
      </Marks>
      <StripLegend hasPlan />
    </div>
  );
}

function Marks({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section>
      <h2>{title}</h2>
      <ul className="plain-list">{children}</ul>
    </section>
  );
}

interface MarkProps {
  /** The mark, or `null` where the sentence has the sign in it. */
  readonly mark: ReactNode;
  readonly means: Message;
}

function Mark({ mark, means }: MarkProps) {
  return (
    <li className="marks-line">
      <div className="marks-drawn">{mark}</div>
      <p>{inWords(means)}</p>
    </li>
  );
}
