import type { Outline } from "../../core/procedure/index.ts";
import type { Amendment } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";

/** Who amended the plan, as the crew calls them. */
export const amenderWords = ({ actor }: Pick<Amendment, "actor">, outline: Outline): string =>
  outline.crew.find(({ id }) => id === actor)?.call ?? actor ?? words("amending/somebody");

/** That the plan was amended, when, by whom and why. */
export function noticeWords(amendment: Amendment, outline: Outline): string {
  const { pet, reason } = amendment;
  const said = { who: amenderWords(amendment, outline), why: reason };
  return pet === null
    ? words("amending/notice-before-start", said)
    : words("amending/notice", { pet, ...said });
}
