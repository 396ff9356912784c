import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { waysOf, waysWhile } from "../place/index.ts";
import type { Outline, OutlineStep, StateValues } from "../procedure/index.ts";
import { stateLabel, valueLabel } from "../procedure/index.ts";
import type { CrewId, PlaceId, StepId } from "../units/index.ts";
import type { Standing } from "./standing.ts";
import type { UnmetState } from "./states-home.ts";

/** The state that bars the way home, what needs it otherwise, and what would have to set it ([PRO13]). */
export interface ReturnBar extends UnmetState {
  /** The closeout step that needs it, itself or for the way to it; `null` for the way to a refuge at the end. */
  readonly step: StepId | null;
  /** Who would need it for a way; `null` when the step itself needs it. */
  readonly crew: CrewId | null;
  /** The step that would have to set it; `null` when none does. */
  readonly setBy: StepId | null;
  /** A sentence each: what needs the state, and what would have to set it. */
  readonly why: Message;
}

/** A closeout step, or the way of a crew member to it or to a refuge, that may be shut. */
export interface Shut {
  readonly entry: OutlineStep | null;
  /** The lane whose way it is; `null` for the step itself. */
  readonly lane: number | null;
  readonly standing: Standing | null;
  /** Where the way leads; `null` for a refuge. */
  readonly to: PlaceId | null;
}

/** How a step stands on the way home. */
interface StandingOfStep {
  readonly isActive: boolean;
  /** True for a closeout step that is not complete. */
  readonly isLeft: boolean;
  readonly isDone: boolean;
}

/**
 * The first state that shuts one of these; `null` when none does. One that a step would set which is itself shut is
 * passed over for what shuts that step. `unmet` gives what is not met of some needs, and `standingOf` how a step stands.
 */
export function returnBarOf(
  outline: Outline,
  shut: readonly Shut[],
  unmet: (needs: StateValues) => UnmetState | null,
  standingOf: (entry: OutlineStep) => StandingOfStep,
): ReturnBar | null {
  const bars = shut.flatMap((one) => {
    const found = one.lane === null ? unmet(one.entry?.step.needs ?? {}) : onWay(outline, one, unmet);
    return found ? [{ one, found, setter: setterOf(outline, found, standingOf) }] : [];
  });
  const bar = bars.find(({ setter }) => !setter || !standingOf(setter).isLeft) ?? bars[0];
  if (!bar) return null;
  const { one, found, setter } = bar;
  const crew = one.lane === null ? null : (outline.crew[one.lane]?.id ?? null);
  return {
    ...found,
    step: one.entry?.step.id ?? null,
    crew,
    setBy: setter?.step.id ?? null,
    why: message("return/bar", {
      need: needMessage(outline, one, found),
      setter: setterMessage(setter, setter && standingOf(setter)),
    }),
  };
}

/**
 * What shuts the quickest way, over all routes, from where somebody stands. Of several closed routes the one counts that
 * there is no way round.
 */
function onWay(
  outline: Outline,
  { standing, to }: Shut,
  unmet: (needs: StateValues) => UnmetState | null,
): UnmetState | null {
  if (!standing) return null;
  const { procedure } = outline;
  const ways = waysOf(procedure);
  const ends = "place" in standing ? [standing.place] : [standing.to, standing.from];
  const walked = "place" in standing ? [] : [ways.quickest(standing.from, standing.to)];
  const all = [...walked, ...ends.map((end) => (to === null ? ways.toRefuge(end) : ways.quickest(end, to)))];
  const shut: UnmetState[] = [];
  for (const way of all) {
    for (const [position, b] of (way?.places ?? []).slice(1).entries()) {
      const a = way?.places[position];
      const routes = procedure.routes.filter(
        ({ between }) => between.includes(b) && a && between.includes(a),
      );
      const closed = routes.map(({ needs }) => unmet(needs ?? {}));
      const [first] = closed;
      if (first && closed.every((one) => one !== null)) shut.push(first);
    }
  }
  const leads = ({ state }: UnmetState) => {
    const then = waysWhile(procedure, ({ [state]: _, ...needs }) => unmet(needs) === null);
    return ends.some((end) => (to === null ? then.toRefuge(end) : then.quickest(end, to)));
  };
  return shut.find(leads) ?? shut[0] ?? null;
}

/** The step that would have to set a state: of closeout if there is one, else one that is left out, else one that is done. */
function setterOf(
  outline: Outline,
  { state, value }: UnmetState,
  standingOf: (entry: OutlineStep) => StandingOfStep,
): OutlineStep | null {
  const setters = outline.steps.filter(
    (entry) => entry.step.sets?.[state] === value && standingOf(entry).isActive,
  );
  return (
    setters.find((entry) => standingOf(entry).isLeft) ??
    setters.find((entry) => !standingOf(entry).isDone) ??
    setters.at(-1) ??
    null
  );
}

function needMessage(outline: Outline, { entry, lane, to }: Shut, { state, value, is }: UnmetState): Message {
  const need = {
    state: stateLabel(outline, state),
    value: valueLabel(outline, value),
    is: valueLabel(outline, is),
  };
  if (lane === null) return message("return/step-needs", { ...need, step: entry?.step.id ?? "" });
  const crew = outline.crew[lane]?.call ?? "";
  return to === null
    ? message("return/refuge-needs", { ...need, crew })
    : message("return/way-needs", { ...need, crew, place: outline.place(to)?.label ?? to });
}

function setterMessage(setter: OutlineStep | null, standing: StandingOfStep | null): Message {
  if (!setter || !standing) return message("return/set-by-none");
  const { id: step } = setter.step;
  if (standing.isLeft) return message("return/set-by-closeout", { step });
  return standing.isDone
    ? message("return/set-by-done", { step })
    : message("return/set-by-left-out", { step });
}
