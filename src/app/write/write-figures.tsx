import { words } from "../../words/index.ts";
import { Fact } from "../parts/index.ts";
import type { Answers } from "./use-answers.ts";

/** What is written comes to: finish, margin and chance, and whether they are of what is written now ([WRT4]). */
export function Figures({
  answers: { plan, within, isBehind, isBroken },
  limit,
}: {
  readonly answers: Answers;
  readonly limit: string | undefined;
}) {
  return (
    <dl className="write-figures" aria-busy={isBehind}>
      <Fact name={words("read/planned-finish")}>
        {plan?.finish == null ? words("parts/no-plan") : words("write/finish", { finish: plan.finish })}
      </Fact>
      <Fact name={words("read/margin")}>
        {limit === undefined
          ? words("read/no-limit")
          : plan?.margin == null
            ? "–"
            : plan.margin < 0
              ? words("write/over", { time: -plan.margin as typeof plan.margin })
              : words("figures/margin", { time: plan.margin })}
      </Fact>
      <Fact name={words("write/chance")}>
        {within === null ? "–" : words("figures/chance", { share: within })}
      </Fact>
      <Fact name={words("write/as-of")}>
        {words(isBroken ? "write/no-worker" : isBehind ? "write/working" : "write/as-written")}
      </Fact>
    </dl>
  );
}
