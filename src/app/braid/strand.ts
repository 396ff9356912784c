import type { CrewMember } from "../../core/procedure/index.ts";

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

/** The looks of those who have one of their own: the first and the second outside, the first inside and on the ground. */
const OWN_LOOKS: Readonly<Record<CrewMember["station"], readonly number[]>> = {
  outside: [1, 2],
  inside: [3],
  ground: [4],
};

/** The looks that everybody else shares in turn; their labels tell them apart. */
const SHARED_LOOKS = [5, 6] as const;

/**
 * The strands of a crew, in the order of its lanes. Dash and hue go with the station and the place in the list, so that
 * a role looks the same in every procedure.
 */
export function strandsOf(crew: readonly CrewMember[]): Strand[] {
  const seen = { outside: 0, inside: 0, ground: 0 };
  let others = 0;
  return crew.map(({ call, station }, lane) => {
    const own = OWN_LOOKS[station][seen[station]++];
    const look = own ?? SHARED_LOOKS[others++ % SHARED_LOOKS.length];
    return {
      lane,
      call,
      short: shortCall(call),
      colour: `var(--lane-${look})`,
      dash: `var(--lane-${look}-dash)`,
    };
  });
}
