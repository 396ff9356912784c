import { message } from "../../words/index.ts";
import type { HappensBefore, Network } from "../order/index.ts";
import type { CrewMember, Finding, Outline } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { PlaceId, StepId } from "../units/index.ts";
import type { LineSpan } from "./tether-line.ts";
import { lineSpansOf, tetherStepsOf } from "./tether-line.ts";
import { waysOf } from "./ways.ts";
import type { Whereabouts } from "./whereabouts.ts";

const labelOf = (outline: Outline, place: PlaceId) => outline.place(place)?.label ?? place;
const idOf = (outline: Outline, index: number) => outline.steps[index]?.step.id as StepId;

/**
 * Reports where a tether does not reach. Every place at which a tethered performer is when a step starts or ends must
 * be within the tether's length of its anchor by the shortest route ([PLN7]). There is one finding for each stay at a
 * place, naming all the steps during it. Moving the anchor to a place where the performer is not is reported too.
 */
export function reachFindings(network: Network, whereabouts: Whereabouts): Finding[] {
  const { outline } = network;
  return outline.crew.flatMap((member, lane) => {
    const stays: Stay[] = [];
    const misplaced: Finding[] = [];
    const visit = (step: number, anchor: PlaceId, place: PlaceId | null) => {
      if (place === null) return;
      const last = stays.at(-1);
      if (last?.anchor !== anchor || last.place !== place) stays.push({ anchor, place, steps: [step] });
      else if (last.steps.at(-1) !== step) last.steps.push(step);
    };
    for (const { step, anchor, start, end, moved } of tetherStepsOf(network, whereabouts, lane)) {
      visit(step, anchor, start);
      visit(step, anchor, end);
      if (moved !== null && start !== null && moved !== start && moved !== end) {
        misplaced.push(anchorElsewhere(outline, { member, step, anchor: moved, place: end ?? start }));
      }
    }
    return [...stays.flatMap((stay) => beyondReach(outline, member, stay)), ...misplaced];
  });
}

interface Stay {
  readonly anchor: PlaceId;
  readonly place: PlaceId;
  readonly steps: number[];
}

function beyondReach(outline: Outline, member: CrewMember, { anchor, place, steps }: Stay): Finding[] {
  const length = member.tether?.length ?? 0;
  const way = waysOf(outline.procedure).shortest(anchor, place);
  const first = outline.steps[steps[0] ?? -1];
  if (!first || (way && way.cost <= length)) return [];
  const { step, pointer } = first;
  const where = step.to === place ? `${pointer}/to` : step.at === place ? `${pointer}/at` : pointer;
  const concerned = {
    steps: steps.map((index) => idOf(outline, index)),
    things: [member.id, place, anchor],
  };
  const reach = {
    step: step.id,
    crew: member.call,
    place: labelOf(outline, place),
    anchor: labelOf(outline, anchor),
  };
  if (!way) {
    const unknown = message("tether/reach-not-known", reach);
    return [finding("caution", "tether/reach-not-known", where, unknown, concerned)];
  }
  const tooShort = message("tether/out-of-reach", {
    ...reach,
    way: way.cost,
    length,
    short: way.cost - length,
  });
  return [finding("error", "tether/out-of-reach", where, tooShort, concerned)];
}

/** A step that moves the anchor of a tether to another place than where its crew member is. */
interface MisplacedAnchor {
  readonly member: CrewMember;
  readonly step: number;
  readonly anchor: PlaceId;
  readonly place: PlaceId;
}

function anchorElsewhere(outline: Outline, { member, step, anchor, place }: MisplacedAnchor): Finding {
  const elsewhere = message("tether/anchor-not-there", {
    step: idOf(outline, step),
    crew: member.call,
    anchor: labelOf(outline, anchor),
    place: labelOf(outline, place),
  });
  return finding("error", "tether/anchor-not-there", `${outline.steps[step]?.pointer}/anchor`, elsewhere, {
    steps: [idOf(outline, step)],
    things: [member.id, anchor],
  });
}

interface Line {
  readonly lane: number;
  readonly spans: readonly LineSpan[];
}

/**
 * Reports where the lines of two tethered crew members may lie over the same route at the same time ([PLN7]). They may
 * unless the order makes sure that one is taken up before the other is laid. There is one finding for each pair and
 * route, naming the first two overlapping spans of steps.
 */
export function sharedRouteFindings(order: HappensBefore, whereabouts: Whereabouts): Finding[] {
  const { network } = order;
  const { outline } = network;
  const ways = waysOf(outline.procedure);
  const byRoute = new Map<string, Line[]>();
  for (const [lane, { tether }] of outline.crew.entries()) {
    if (!tether) continue;
    for (const [route, spans] of lineSpansOf(network, whereabouts, ways, lane)) {
      const lines = byRoute.get(route) ?? [];
      lines.push({ lane, spans });
      byRoute.set(route, lines);
    }
  }
  return [...byRoute].flatMap(([route, lines]) =>
    lines.flatMap((one, position) =>
      lines.slice(position + 1).flatMap((other) => {
        const shared = firstShared(order, one.spans, other.spans);
        return shared ? [sharedRoute(outline, { route, lanes: [one.lane, other.lane], spans: shared })] : [];
      }),
    ),
  );
}

/**
 * The first two spans that may overlap in time. Each list is in the order of its lane, so a span that is over before a
 * given span is also over before all later ones.
 */
function firstShared(
  order: HappensBefore,
  ones: readonly LineSpan[],
  others: readonly LineSpan[],
): readonly [LineSpan, LineSpan] | null {
  let at = 0;
  let otherAt = 0;
  for (;;) {
    const one = ones[at];
    const other = others[otherAt];
    if (!one || !other) return null;
    if (order.before(one.to, other.from)) at += 1;
    else if (order.before(other.to, one.from)) otherAt += 1;
    else return [one, other];
  }
}

/** Two lines that may lie over one route at the same time, each by its lane and the span of steps. */
interface SharedRoute {
  readonly route: string;
  readonly lanes: readonly [number, number];
  readonly spans: readonly [LineSpan, LineSpan];
}

function sharedRoute(outline: Outline, { route, lanes, spans: [one, other] }: SharedRoute): Finding {
  const [a, b] = route.split(" ") as [PlaceId, PlaceId];
  const [member, otherMember] = lanes.map((lane) => outline.crew[lane]);
  const during = ({ from, to }: LineSpan) =>
    from === to
      ? message("tether/in-step", { step: idOf(outline, from) })
      : message("tether/from-step-to-step", { first: idOf(outline, from), last: idOf(outline, to) });
  const indices = [...new Set([one.from, one.to, other.from, other.to])].sort((x, y) => x - y);
  const later = outline.steps[Math.max(one.from, other.from)];
  const shared = message("tether/shared-route", {
    one: String(member?.call),
    other: String(otherMember?.call),
    from: labelOf(outline, a),
    to: labelOf(outline, b),
    oneDuring: during(one),
    otherDuring: during(other),
  });
  return finding("advice", "tether/shared-route", later?.pointer ?? "", shared, {
    steps: indices.map((index) => idOf(outline, index)),
    things: [member?.id ?? "", otherMember?.id ?? "", a, b],
  });
}
