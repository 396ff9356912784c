import { message } from "../../words/index.ts";
import type { HelpContents, HelpScreen } from "./help-contents.ts";
import { line, section } from "./help-contents.ts";

const BRAID = [
  line(message("guide/strand"), "strand"),
  line(message("guide/bead"), "bead"),
  line(message("guide/knot"), "knot"),
  line(message("guide/perhaps"), "perhaps"),
];

/** What is said of a log as a record. */
const RECORD = (["guide/review-record", "guide/review-record-how", "guide/review-voice-code"] as const).map(
  (key) => line(message(key)),
);

/** Stands at the end of every page. */
const ADVICE = section(
  message("guide/advice"),
  line(message("guide/advises")),
  line(message("guide/offline")),
);

const MARKS = message("guide/marks");
const FIGURES = message("guide/figures");
const DOING = message("guide/doing");
const TROUBLE = message("guide/trouble");

/** The page of help of every screen: marks, what can be done, where figures come from, what to do in trouble. */
export const HELP: Readonly<Record<HelpScreen, HelpContents>> = {
  shelf: {
    title: message("guide/shelf"),
    sections: [
      section(
        DOING,
        line(message("guide/shelf-first")),
        line(message("guide/shelf-walk")),
        line(message("guide/shelf-follow")),
        line(message("guide/shelf-read")),
        line(message("guide/shelf-join")),
        line(message("guide/shelf-bring")),
      ),
      section(
        FIGURES,
        line(message("guide/shelf-units")),
        line(message("guide/shelf-facts")),
        line(message("guide/shelf-findings")),
        line(message("guide/shelf-room")),
      ),
      section(
        TROUBLE,
        line(message("guide/shelf-unreadable")),
        line(message("guide/shelf-lost")),
        line(message("guide/shelf-remove")),
      ),
      ADVICE,
    ],
  },
  write: {
    title: message("guide/write"),
    sections: [
      section(MARKS, ...BRAID),
      section(
        DOING,
        line(message("guide/write-table")),
        line(message("guide/write-beside")),
        line(message("guide/write-link")),
        line(message("guide/write-joint")),
        line(message("guide/write-drag")),
        line(message("guide/write-timeline")),
        line(message("guide/write-map")),
        line(message("guide/write-languages")),
        line(message("guide/write-undo")),
      ),
      section(FIGURES, line(message("guide/write-figures")), line(message("guide/write-offers"))),
      section(
        TROUBLE,
        line(message("guide/write-kept")),
        line(message("guide/write-two")),
        line(message("guide/write-lost")),
      ),
      ADVICE,
    ],
  },
  read: {
    title: message("guide/read"),
    sections: [
      section(
        MARKS,
        ...BRAID,
        line(message("guide/alert-words")),
        line(message("guide/critical")),
        line(message("guide/read-finding")),
        line(message("guide/read-conditions")),
        line(message("guide/read-branch")),
        line(message("guide/texts")),
      ),
      section(
        FIGURES,
        line(message("guide/read-outline")),
        line(message("guide/planned-times")),
        line(message("guide/slack")),
        line(message("guide/margin")),
        line(message("guide/read-waits")),
      ),
      section(DOING, line(message("guide/remarks")), line(message("guide/remarks-agree"))),
      section(TROUBLE, line(message("guide/read-no-plan")), line(message("guide/read-mend"))),
      ADVICE,
    ],
  },
  timeline: {
    title: message("guide/timeline"),
    sections: [
      section(
        MARKS,
        line(message("guide/timeline-lanes")),
        line(message("guide/timeline-shapes")),
        line(message("guide/timeline-waits")),
        line(message("guide/critical")),
        line(message("guide/timeline-now")),
      ),
      section(
        FIGURES,
        line(message("guide/planned-times")),
        line(message("guide/timeline-forecast")),
        line(message("guide/slack")),
        line(message("guide/margin")),
        line(message("guide/share")),
        line(message("guide/timeline-misses")),
        line(message("guide/timeline-starts")),
        line(message("guide/timeline-light")),
      ),
      section(
        TROUBLE,
        line(message("guide/timeline-what-if")),
        line(message("guide/timeline-split")),
        line(message("guide/timeline-fragments")),
        line(message("guide/timeline-leaves")),
        line(message("guide/timeline-none")),
      ),
      ADVICE,
    ],
  },
  follow: {
    title: message("guide/follow"),
    sections: [
      section(
        MARKS,
        ...BRAID,
        line(message("guide/follow-marker"), "marker"),
        line(message("guide/follow-slack"), "slack"),
        line(message("guide/follow-act-now")),
        line(message("guide/follow-look-soon")),
        line(message("guide/follow-know")),
        line(message("guide/follow-owed")),
        line(message("guide/follow-times")),
        line(message("guide/alert-words")),
      ),
      section(
        DOING,
        line(message("guide/follow-tap")),
        line(message("guide/follow-step")),
        line(message("guide/follow-branches")),
        line(message("guide/follow-away")),
        line(message("guide/texts")),
        line(message("guide/follow-practice")),
      ),
      section(
        FIGURES,
        line(message("guide/follow-pet")),
        line(message("guide/follow-margin")),
        line(message("guide/follow-fit")),
        line(message("guide/follow-amend")),
        line(message("guide/follow-turn-back")),
        line(message("guide/share")),
        line(message("guide/follow-supplies")),
        line(message("guide/follow-windows")),
      ),
      section(
        TROUBLE,
        line(message("guide/follow-unsure")),
        line(message("guide/follow-wrong")),
        line(message("guide/follow-refused")),
        line(message("guide/follow-link-lost")),
        line(message("guide/follow-voice-code")),
        line(message("guide/follow-gone")),
      ),
      ADVICE,
    ],
  },
  train: {
    title: message("guide/train"),
    sections: [
      section(
        DOING,
        line(message("guide/train-what")),
        line(message("guide/train-lay")),
        line(message("guide/train-fire")),
        line(message("guide/train-here")),
        line(message("guide/train-file")),
        line(message("guide/train-play")),
      ),
      section(
        TROUBLE,
        line(message("guide/train-hidden")),
        line(message("guide/train-wrong")),
        line(message("guide/train-review")),
      ),
      ADVICE,
    ],
  },
  review: {
    title: message("guide/review"),
    sections: [
      section(
        MARKS,
        line(message("guide/review-pairs")),
        line(message("guide/review-drift")),
        line(message("guide/review-deviations")),
        line(message("guide/review-delay")),
        line(message("guide/review-tables")),
        line(message("guide/review-surprises")),
      ),
      section(
        FIGURES,
        line(message("guide/review-log")),
        line(message("guide/review-starts")),
        line(message("guide/review-clocks")),
        line(message("guide/review-open")),
        ...RECORD,
      ),
      section(
        TROUBLE,
        line(message("guide/review-wrong")),
        line(message("guide/review-comments")),
        line(message("guide/review-export")),
        line(message("guide/review-unsound")),
        line(message("guide/review-extract")),
      ),
      ADVICE,
    ],
  },
  library: {
    title: message("guide/library"),
    sections: [
      section(
        DOING,
        line(message("guide/library-take")),
        line(message("guide/library-keep")),
        line(message("guide/library-apart")),
      ),
      section(FIGURES, line(message("guide/library-figures"))),
      section(TROUBLE, line(message("guide/library-offline")), line(message("guide/library-roles"))),
      ADVICE,
    ],
  },
  marks: {
    title: message("guide/marks-title"),
    sections: [
      section(
        MARKS,
        line(message("guide/marks-page")),
        line(message("guide/marks-hue")),
        line(message("guide/marks-themes")),
      ),
      section(TROUBLE, line(message("guide/marks-sample")), line(message("guide/marks-words"))),
      ADVICE,
    ],
  },
  map: {
    title: message("guide/map"),
    sections: [
      section(
        MARKS,
        line(message("guide/map-places")),
        line(message("guide/map-people")),
        line(message("guide/map-lines")),
        line(message("guide/map-shared")),
        line(message("guide/map-home")),
        line(message("guide/map-light")),
      ),
      section(
        DOING,
        line(message("guide/map-ask")),
        line(message("guide/map-move")),
        line(message("guide/map-moment")),
      ),
      section(
        FIGURES,
        line(message("guide/map-positions")),
        line(message("guide/map-where")),
        line(message("guide/map-left")),
      ),
      section(TROUBLE, line(message("guide/map-sketch")), line(message("guide/map-crowded"))),
      ADVICE,
    ],
  },
  learn: {
    title: message("guide/learn"),
    sections: [
      section(MARKS, line(message("guide/learn-strip")), line(message("guide/learn-marks"))),
      section(
        FIGURES,
        line(message("guide/learn-weight")),
        line(message("guide/learn-left-out")),
        line(message("guide/learn-claims")),
      ),
      section(DOING, line(message("guide/learn-offer"))),
      section(TROUBLE, line(message("guide/learn-disagree")), line(message("guide/learn-here"))),
      ADVICE,
    ],
  },
  walks: {
    title: message("guide/walks"),
    sections: [
      section(MARKS, line(message("guide/walks-strips")), line(message("guide/learn-marks"))),
      section(
        FIGURES,
        line(message("guide/walks-steps")),
        line(message("guide/walks-order")),
        line(message("guide/walks-groups")),
        line(message("guide/walks-forecasts")),
      ),
      section(DOING, line(message("guide/walks-open"))),
      section(TROUBLE, line(message("guide/learn-claims")), line(message("guide/learn-here"))),
      ADVICE,
    ],
  },
  brief: {
    title: message("guide/brief"),
    sections: [
      section(
        DOING,
        line(message("guide/brief-play")),
        line(message("guide/brief-keys")),
        line(message("guide/brief-audience")),
        line(message("guide/brief-quiz")),
        line(message("guide/brief-spoken")),
        line(message("guide/brief-paper")),
      ),
      section(FIGURES, line(message("guide/brief-figures")), line(message("guide/brief-flown"))),
      section(TROUBLE, line(message("guide/brief-trouble"))),
      ADVICE,
    ],
  },
  compare: {
    title: message("guide/compare"),
    sections: [
      section(MARKS, line(message("guide/compare-changes")), line(message("guide/compare-flag"))),
      section(
        DOING,
        line(message("guide/compare-choose")),
        line(message("guide/compare-print")),
        line(message("guide/compare-merge")),
      ),
      section(FIGURES, line(message("guide/compare-effect"))),
      section(TROUBLE, line(message("guide/compare-not-there"))),
      ADVICE,
    ],
  },
  extract: {
    title: message("guide/extract"),
    sections: [
      section(FIGURES, line(message("guide/extract-what")), ...RECORD),
      section(TROUBLE, line(message("guide/review-unsound"))),
      ADVICE,
    ],
  },
  handover: {
    title: message("guide/handover"),
    sections: [
      section(
        DOING,
        line(message("guide/handover-what")),
        line(message("guide/handover-moment")),
        line(message("guide/handover-paper")),
      ),
      section(FIGURES, line(message("guide/handover-figures"))),
      section(TROUBLE, line(message("guide/handover-unseen")), line(message("guide/handover-late"))),
      ADVICE,
    ],
  },
  join: {
    title: message("guide/join"),
    sections: [
      section(
        DOING,
        line(message("guide/join-code")),
        line(message("guide/join-roles")),
        line(message("guide/join-owner")),
        line(message("guide/join-kept")),
        line(message("guide/join-key")),
      ),
      section(TROUBLE, line(message("guide/join-expired")), line(message("guide/join-unreachable"))),
      ADVICE,
    ],
  },
};
