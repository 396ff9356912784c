import type { KeyboardEvent, MouseEvent, RefObject } from "react";
import type { Duration } from "../../core/units/index.ts";
import { barBeside, nearestBar } from "./bar-walk.ts";
import type { ChartLayout } from "./chart-layout.ts";
import type { LaneBar } from "./lane-bar.ts";
import { shownFinish, shownStart } from "./lane-bar.ts";
import type { TimeScale } from "./time-scale.ts";

interface BarChoiceParts {
  readonly scroller: RefObject<HTMLElement | null>;
  readonly lanes: readonly (readonly LaneBar[])[];
  readonly scale: TimeScale;
  readonly layout: ChartLayout;
  /** The bar from which the arrow keys move; `null` without bars. */
  readonly reachable: LaneBar | null;
  readonly onChoose: (bar: LaneBar) => void;
  /** Called with a bar that is tapped, or taken by Enter or the space bar, once it is chosen; arrow keys only choose. */
  readonly onPick: (bar: LaneBar) => void;
  /** Called with the PET of every tap, on a bar or beside it. */
  readonly onTouch: (pet: Duration) => void;
  /** Scrolls the stretch from one x to another into view. */
  readonly reveal: (from: number, to: number) => void;
}

interface BarChoice {
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onClick: (event: MouseEvent<SVGSVGElement>) => void;
}

/** A tap this near to a bar counts as a tap on it, in px, because many bars are too short to hit. */
const REACH = 28;

/** The handlers with which a reader chooses a bar, by keys or by a tap. A chosen bar gets the focus. */
export function useBarChoice(parts: BarChoiceParts): BarChoice {
  const { scroller, lanes, scale, layout, reachable, onChoose, onPick, onTouch, reveal } = parts;
  const choose = (bar: LaneBar) => {
    onChoose(bar);
    reveal(scale.x(shownStart(bar)), scale.x(shownFinish(bar)));
    const shown = scroller.current?.querySelector<SVGGElement>(`[data-bar="${bar.key}"]`);
    shown?.focus({ preventScroll: true });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (!reachable || event.altKey || event.ctrlKey || event.metaKey) return;
    const isTaken = event.key === "Enter" || event.key === " ";
    const next = isTaken ? reachable : barBeside(lanes, reachable, event.key);
    if (!next) return;
    event.preventDefault();
    choose(next);
    if (isTaken) onPick(next);
  };
  const onClick = (event: MouseEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const pet = scale.pet(event.clientX - box.left);
    const lane = Math.floor((event.clientY - box.top - layout.lanesTop) / layout.lane.height);
    const bar = nearestBar(lanes[lane] ?? [], pet);
    const x = scale.x(pet);
    if (bar && x >= scale.x(shownStart(bar)) - REACH && x <= scale.x(shownFinish(bar)) + REACH) {
      choose(bar);
      onPick(bar);
    }
    onTouch(Math.min(scale.end, Math.max(0, Math.round(pet))) as Duration);
  };
  return { onKeyDown, onClick };
}
