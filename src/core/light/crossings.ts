import type { Instant } from "../units/index.ts";

/** A span between two instants, both of which belong to it. */
export interface InstantSpan {
  readonly start: Instant;
  readonly end: Instant;
}

/** A function of time whose sign matters. Where it is undefined it returns `null`, which ends the search there. */
export type Depth = (instant: number) => number | null;

/** The value of a depth at an instant, in ms. */
interface Sample {
  readonly at: number;
  readonly depth: number;
}

/** The precision to which edges are found, in ms. */
const EDGE = 20;
/** The precision to which the bottom of a dip is found, in ms. It is fine enough not to miss a dip of a second. */
const BOTTOM = 250;

/** Thrown when a depth is undefined where it is needed, because the orbit has decayed. It is caught in this folder. */
export class UndefinedDepthError extends Error {
  override readonly name = "UndefinedDepthError";
}

/**
 * The spans in [from, to] during which `depth` is below zero. `depth` must have at most one dip between neighbouring
 * samples (`stride` ms apart), as a shadow or a pass has once a revolution. Samples bracket each dip; golden section
 * search (Kiefer 1953) finds its bottom, and bisection with secant steps (Illinois; Dowell & Jarratt 1971) finds its
 * edges. No dip of a second or more is missed.
 */
export function spansBelow(depth: Depth, from: Instant, to: Instant, stride: number): InstantSpan[] {
  const value = (at: number): number => {
    const found = depth(at);
    if (found === null) throw new UndefinedDepthError(`not defined at ${at}`);
    return found;
  };
  const looks: Sample[] = [];
  const count = Math.max(2, Math.ceil((to - from) / stride));
  for (let look = 0; look <= count; look += 1) {
    const at = from + ((to - from) * look) / count;
    looks.push({ at, depth: value(at) });
  }
  const edges: number[] = [];
  for (const [index, right] of looks.entries()) {
    const left = looks[index - 1];
    if (!left) continue;
    if (left.depth < 0 !== right.depth < 0) {
      edges.push(edgeBetween(value, left, right));
      continue;
    }
    // Both samples have the same sign. A dip or a bump may hide between them where the neighbouring samples bend that
    // way.
    const [before, after] = [looks[index - 2], looks[index + 1]];
    const sign = left.depth < 0 ? -1 : 1;
    const bends =
      (!before || sign * before.depth >= sign * left.depth) &&
      (!after || sign * after.depth >= sign * right.depth);
    if (!bends) continue;
    const found = bottomBetween((at) => sign * value(at), left.at, right.at);
    if (found.depth >= 0) continue;
    const bottom = { at: found.at, depth: sign * found.depth };
    edges.push(edgeBetween(value, left, bottom), edgeBetween(value, bottom, right));
  }
  const [first] = looks;
  const bounds = [...(first && first.depth < 0 ? [from as number] : []), ...edges];
  if (bounds.length % 2 === 1) bounds.push(to);
  const spans: InstantSpan[] = [];
  for (let index = 0; index + 1 < bounds.length; index += 2) {
    spans.push({
      start: Math.round(bounds[index] ?? from) as Instant,
      end: Math.round(bounds[index + 1] ?? to) as Instant,
    });
  }
  return spans;
}

function bottomBetween(value: (at: number) => number, from: number, to: number): Sample {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  let [c, d] = [b - golden * (b - a), a + golden * (b - a)];
  let [atC, atD] = [value(c), value(d)];
  while (b - a > BOTTOM && atC >= 0 && atD >= 0) {
    if (atC < atD) {
      [b, d, atD] = [d, c, atC];
      c = b - golden * (b - a);
      atC = value(c);
    } else {
      [a, c, atC] = [c, d, atD];
      d = a + golden * (b - a);
      atD = value(d);
    }
  }
  return atC < atD ? { at: c, depth: atC } : { at: d, depth: atD };
}

/** The instant at which a depth changes sign between two samples of different sign, in ms. */
function edgeBetween(value: (at: number) => number, left: Sample, right: Sample): number {
  let [a, atA, b, atB] = [left.at, left.depth, right.at, right.depth];
  let side = 0;
  while (b - a > EDGE) {
    const at = a + ((b - a) * atA) / (atA - atB);
    // A secant step that hardly moves is replaced by a bisection step, so that both ends close in.
    const next = at - a < EDGE / 4 || b - at < EDGE / 4 ? a + (b - a) / 2 : at;
    const found = value(next);
    if (found < 0 === atA < 0) {
      [a, atA] = [next, found];
      if (side === -1) atB /= 2;
      side = -1;
    } else {
      [b, atB] = [next, found];
      if (side === 1) atA /= 2;
      side = 1;
    }
    if (found === 0) return next;
  }
  return (a + b) / 2;
}
