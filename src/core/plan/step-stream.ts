import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { RandomSource } from "./pert.ts";

/** The first draws of generators with small seeds are similar, so this many draws are discarded. */
const WARM_UP = 64;

const UNIFORM = 2 ** -32;

/** Gives draws of 32 bits, one after another. */
export interface Stream {
  next(): number;
}

/** The stream of draws of a step, or of what else has an id, which hangs on the seed and the id alone. */
export function streamOf(step: string, seed: number): Stream {
  // FNV-1a (Fowler, Noll and Vo), so that ids which differ little have streams that differ much.
  let hash = 0x811c9dc5 ^ seed;
  for (let at = 0; at < step.length; at += 1) hash = Math.imul(hash ^ step.charCodeAt(at), 0x01000193);
  const stream = xoroshiro128plus(Math.imul(hash ^ (hash >>> 16), 0x45d9f3b));
  for (let draw = 0; draw < WARM_UP; draw += 1) stream.next();
  return stream;
}

/** The next draw of a stream, from the uniform distribution on [0, 1). */
export const uniformOf = (stream: Stream): number => (stream.next() >>> 0) * UNIFORM;

/**
 * Returns a source of random numbers of a step's own: it gives the same numbers for the same seed and step, whatever other
 * steps there are. What else has an id may have one too.
 */
export function stepSource(step: string, seed: number): RandomSource {
  const stream = streamOf(step, seed);
  return () => uniformOf(stream);
}
