import type { CrewMember } from "./schema.ts";

/** The looks of those who have one of their own: the first and the second outside, the first inside and on the ground. */
const OWN_LOOKS: Readonly<Record<CrewMember["station"], readonly number[]>> = {
  outside: [1, 2],
  inside: [3],
  ground: [4],
};

/** The looks that everybody else shares in turn; their labels tell them apart. */
const SHARED_LOOKS = [5, 6] as const;

/**
 * For each crew member the number of the look, from 1 to 6, of their strand and line: a hue and a dash pattern. It goes
 * with the station and the place in the list, so that a role looks the same in every procedure.
 */
export function strandLooks(crew: readonly Pick<CrewMember, "station">[]): readonly number[] {
  const seen = { outside: 0, inside: 0, ground: 0 };
  let others = 0;
  return crew.map(
    ({ station }) => OWN_LOOKS[station][seen[station]++] ?? SHARED_LOOKS[others++ % SHARED_LOOKS.length] ?? 1,
  );
}
