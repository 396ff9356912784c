import { IonIcon } from "@ionic/react";
import { checkmarkSharp, ellipseOutline, hourglassOutline, pauseSharp, playSharp } from "ionicons/icons";
import { heldByMessage } from "../../core/course/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { clockText } from "../../core/units/index.ts";
import type { AlertLevel, LaneState, WalkAlert, WalkState } from "../../core/walk/index.ts";
import { askedAgainFor, isShown } from "../../core/walk/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import type { Strand } from "../braid/index.ts";
import { behindTone, behindWords } from "../parts/index.ts";
import { StepDo } from "../texts/index.ts";
import { AlertMark } from "./alert-mark.tsx";

interface CrewCardsProps {
  readonly state: WalkState;
  readonly strands: readonly Strand[];
  readonly alerts: readonly WalkAlert[];
  /** Scrolls a step into view. */
  readonly onShow: (step: string) => void;
}

const ICONS = {
  ready: ellipseOutline,
  working: playSharp,
  waiting: hourglassOutline,
  finished: checkmarkSharp,
} as const;

/** One card per crew member, always in the same order. */
export function CrewCards({ state, strands, alerts, onShow }: CrewCardsProps) {
  return (
    <ul className="crew-cards" aria-label={words("follow/crew")} data-count={state.lanes.length}>
      {state.lanes.map((lane, index) => {
        const strand = strands[index];
        return strand ? (
          <CrewCard
            key={lane.crew}
            state={state}
            lane={lane}
            strand={strand}
            alert={alerts.find((one) => one.crew.includes(lane.crew) && isShown(one))?.level ?? null}
            onShow={onShow}
          />
        ) : null;
      })}
    </ul>
  );
}

/** Minutes and seconds, with hours only when there are any: `2:10`, `1:02:10`. */
function stopwatchText(time: Duration): string {
  return clockText(time).replace(/^0:0?/, "");
}

function statusWords({ ledger, pet, phase }: WalkState, lane: LaneState): string {
  switch (lane.status) {
    case "ready":
      return words("follow/ready");
    case "finished":
      return words("follow/finished");
    case "working": {
      if (phase === "closed") return words("follow/stopped");
      if (phase === "held") return words("follow/held");
      return pet !== null && lane.since !== null
        ? words("follow/working-for", { stopwatch: stopwatchText((pet - lane.since) as Duration) })
        : words("follow/working");
    }
    case "waiting": {
      // The crew members waited for tell the reader more than a lag that runs at the same time.
      const crew = lane.waitingOn.filter((wait) => wait.kind === "crew");
      const next = lane.step === null ? null : ledger.inForce.outline.step(lane.step);
      if (next && askedAgainFor(ledger, next) !== null) return words("follow/waits-for-decided-again");
      if (crew.length > 0 && crew.every((wait) => wait.crew === lane.crew))
        return words("follow/waits-for-decision");
      const heldBy = heldByMessage(
        ledger.inForce.outline,
        crew.length ? crew : lane.waitingOn,
        ledger.petZero,
      );
      return inWords(heldBy ?? message("follow/waits-for-start"));
    }
  }
}

/** About how long a waiting lane still has to wait. Empty when that is unknown, nearly over, or already shown. */
function aboutWords({ pet }: WalkState, { status, expected, waitingOn }: LaneState): string {
  if (status !== "waiting" || pet === null || expected === null) return "";
  const left = (expected - pet) as Duration;
  const isTimed = waitingOn.every(({ kind }) => kind !== "crew");
  return left < 30_000 || isTimed ? "" : words("follow/about", { time: left });
}

function CrewCard({
  state,
  lane,
  strand,
  alert,
  onShow,
}: {
  readonly state: WalkState;
  readonly lane: LaneState;
  readonly strand: Strand;
  /** The level of the most urgent alert that concerns the crew member; `null` without one. */
  readonly alert: AlertLevel | null;
  readonly onShow: (step: string) => void;
}) {
  const { outline } = state.ledger.inForce;
  const step = lane.step === null ? undefined : outline.step(lane.step)?.step;
  const place =
    lane.place === null
      ? stationWords(outline.crew[strand.lane]?.station)
      : (outline.place(lane.place)?.label ?? lane.place);
  const status = statusWords(state, lane);
  const about = aboutWords(state, lane);
  return (
    <li
      className="crew-card"
      style={{ "--lane": strand.colour, "--lane-dash": strand.dash } as React.CSSProperties}
    >
      <button type="button" disabled={!step} onClick={() => step && onShow(step.id)}>
        <svg className="crew-line" aria-hidden="true" preserveAspectRatio="none">
          <line x1="0" y1="3" x2="100%" y2="3" />
        </svg>
        <span className="crew-call">{strand.call}</span>
        <span className="crew-status" data-status={lane.status}>
          <IonIcon
            icon={state.phase === "held" && lane.status === "working" ? pauseSharp : ICONS[lane.status]}
            aria-hidden="true"
          />
          {status}
        </span>
        {alert !== null && (
          <span className="crew-alert">
            <AlertMark level={alert} />
          </span>
        )}
        <span className="crew-step">
          {step ? (
            lane.status === "waiting" ? (
              words("follow/next", { step: step.do })
            ) : (
              <StepDo step={step} isMarked={false} />
            )
          ) : (
            words("follow/no-step-left")
          )}
        </span>
        <span className="crew-place">
          {about && <b>{about}</b>}
          <span>
            <span data-tone={behindTone(lane.behind)}>{behindWords(lane.behind)}</span>
          </span>
          <span>{place}</span>
          <span>{words("follow/done-of", { done: lane.done, all: lane.of })}</span>
        </span>
      </button>
    </li>
  );
}

function stationWords(station: string | undefined): string {
  if (station === "ground") return words("follow/station-ground");
  return words(station === "inside" ? "follow/station-inside" : "follow/station-outside");
}
