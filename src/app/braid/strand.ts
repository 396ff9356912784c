import type { CrewMember } from "../../core/procedure/index.ts";
import { strandLooks } from "../../core/procedure/index.ts";

const VOWELS = /[aeiou\s]/i;

/** A call sign shortened for the head of a strand: `EV1`, `Gnd`, `SD`. */
export function shortCall(call: string): string {
  const words = call.trim().split(/\s+/);
  if (words.length > 1)
    return words
      .map((word) => word[0]?.toUpperCase())
      .join("")
      .slice(0, 3);
  if (call.length <= 4) return call;
  const consonants = [...call.slice(1)].filter((letter) => !VOWELS.test(letter));
  return (call[0] ?? "") + consonants.slice(-2).join("");
}

/** How a lane is drawn. */
export interface Strand {
  readonly lane: number;
  readonly call: string;
  readonly short: string;
  /** A CSS colour. */
  readonly colour: string;
  /** An SVG dash array. */
  readonly dash: string;
}

/**
 * The strands of a crew, in the order of its lanes, each with its look.
 */
export function strandsOf(crew: readonly Pick<CrewMember, "call" | "station">[]): Strand[] {
  const looks = strandLooks(crew);
  return crew.map(({ call }, lane) => ({
    lane,
    call,
    short: shortCall(call),
    colour: `var(--lane-${looks[lane]})`,
    dash: `var(--lane-${looks[lane]}-dash)`,
  }));
}
