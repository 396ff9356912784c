import { memo } from "react";
import type { Stage } from "../../core/course/index.ts";
import type { Strand } from "../braid/index.ts";
import type { LaneLayout } from "./chart-layout.ts";
import { fittedText } from "./step-words.ts";

const LETTER = 8.4;

interface StepBarProps {
  readonly barKey: string;
  readonly strand: Strand;
  readonly top: number;
  readonly layout: LaneLayout;
  /** What a screen reader says. */
  readonly label: string;
  readonly number: string;
  readonly action: string;
  readonly joint: boolean;
  readonly onCriticalPath: boolean;
  readonly selected: boolean;
  /** True for a step with a mark of its own, a bar at its start. */
  readonly marked: boolean;
  readonly reachable: boolean;
  /** The planned step, in px; `null` when it is not planned. */
  readonly plannedFrom: number | null;
  readonly plannedTo: number;
  readonly latest: number;
  /** The step as flown, in px; `null` on paper. */
  readonly flownFrom: number | null;
  readonly flownTo: number;
  readonly stage: Stage | null;
  /** Where the words may start when the start of the bar is out of sight, otherwise 0. */
  readonly seenFrom: number;
  /** The x of the present while the step is in work, otherwise 0. */
  readonly now: number;
}

/**
 * A step in a lane: the plan above, the step as flown below, its slack as a tail. All its props are plain values, so
 * that it is drawn again only when one changes.
 */
export const StepBar = memo(function StepBar(props: StepBarProps) {
  const { layout, top, strand, plannedFrom, flownFrom, selected, stage } = props;
  const isLive = stage !== null;
  const from = flownFrom ?? plannedFrom ?? 0;
  const to = flownFrom === null ? props.plannedTo : props.flownTo;
  const barTop = flownFrom === null ? layout.plannedTop : layout.barTop;
  const barHeight = flownFrom === null ? layout.plannedHeight : layout.barHeight;
  return (
    // biome-ignore lint/a11y/useSemanticElements: there is no button element in a drawing.
    <g
      role="button"
      tabIndex={props.reachable ? 0 : -1}
      aria-label={props.label}
      aria-pressed={selected}
      data-bar={props.barKey}
      className="timeline-step"
      style={{ color: strand.colour }}
      transform={`translate(0 ${top})`}
    >
      {plannedFrom !== null && (
        <>
          {props.latest - props.plannedTo > 1 && (
            <path className="timeline-tail" d={`M${props.plannedTo} ${layout.tail}H${props.latest}m0 -4v8`} />
          )}
          <rect
            className={isLive ? "timeline-planned" : "timeline-planned timeline-planned-wide"}
            x={plannedFrom}
            y={layout.plannedTop}
            width={widthOf(plannedFrom, props.plannedTo)}
            height={layout.plannedHeight}
            rx={cornerOf(props.joint, layout.plannedHeight, props.plannedTo - plannedFrom)}
          />
          {props.onCriticalPath && (
            <path
              className="timeline-critical"
              d={`M${plannedFrom} ${layout.underline}H${Math.max(plannedFrom + 2, props.plannedTo)}m0 3.5H${plannedFrom}`}
            />
          )}
        </>
      )}
      {flownFrom !== null && <FlownBar {...props} flownFrom={flownFrom} />}
      {props.marked && (
        <path
          className="timeline-mark"
          d={`M${from} ${barTop - 8}V${barTop + barHeight + 2}M${from} ${barTop - 8}h7`}
        />
      )}
      <BarWords
        from={Math.max(from, props.seenFrom)}
        to={to}
        top={barTop}
        height={barHeight}
        number={props.number}
        action={props.action}
        inverted={stage === "done"}
      />
      {selected && (
        <rect
          className="timeline-ring"
          x={from - 4}
          y={barTop - 4}
          width={widthOf(from, to) + 8}
          height={barHeight + 8}
          rx={7}
        />
      )}
    </g>
  );
});

const widthOf = (from: number, to: number) => Math.max(2, to - from);

/** The corner radius of a bar. Joint steps have round ends, like a knot. */
const cornerOf = (joint: boolean, height: number, width: number) =>
  joint ? Math.min(height / 2, width / 2, 12) : Math.min(2, width / 2);

function FlownBar({
  stage,
  layout,
  flownFrom,
  flownTo,
  now,
  joint,
}: StepBarProps & { readonly flownFrom: number }) {
  const width = widthOf(flownFrom, flownTo);
  const bottom = layout.barTop + layout.barHeight;
  const shape = {
    x: flownFrom,
    y: layout.barTop,
    width,
    height: layout.barHeight,
    rx: cornerOf(joint, layout.barHeight, width),
  };
  if (stage === "in-work") {
    const passed = Math.max(2, now - flownFrom);
    const end = Math.max(flownFrom + width, flownFrom + passed) + 6;
    return (
      <>
        <path
          className="timeline-open"
          d={`M${end} ${layout.barTop}H${flownFrom}V${bottom}H${end}l-5 ${-layout.barHeight / 4} 5 ${-layout.barHeight / 4} -5 ${-layout.barHeight / 4}z`}
        />
        <rect className="timeline-passed" x={flownFrom} y={bottom - 7} width={passed} height={7} />
      </>
    );
  }
  if (stage === "skipped") {
    return (
      <path
        className="timeline-skipped"
        d={`M${flownFrom - 5} ${layout.barTop + layout.barHeight / 2 - 6}l10 12m0 -12l-10 12`}
      />
    );
  }
  return <rect className={stage === "done" ? "timeline-done" : "timeline-to-come"} {...shape} />;
}

interface BarWordsProps {
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly height: number;
  readonly number: string;
  readonly action: string;
  readonly inverted: boolean;
}

/** The number and the action, as far as there is room. */
function BarWords({ from, to, top, height, number, action, inverted }: BarWordsProps) {
  const room = to - from - 14;
  const numberRoom = number.length * LETTER;
  if (room < numberRoom) return null;
  const words = fittedText(action, room - numberRoom - 8, LETTER);
  return (
    <text
      className={inverted ? "timeline-words timeline-words-inverted" : "timeline-words"}
      x={from + 7}
      y={top + height / 2 + 5.5}
    >
      <tspan className="timeline-number">{number}</tspan>
      {words && <tspan dx={8}>{words}</tspan>}
    </text>
  );
}
