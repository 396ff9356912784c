import { words } from "../../words/index.ts";

/** The people who made entries, in words: call signs for the crew, other names as they are, each of them once. */
export function actorsText(
  entered: readonly { readonly actor: string | null }[],
  crew: readonly { readonly id: string; readonly call: string }[],
): string {
  const names = entered.map(
    ({ actor }) => crew.find(({ id }) => id === actor)?.call ?? actor ?? words("follow/another-device"),
  );
  return [...new Set(names)].join(words("figures/between"));
}
