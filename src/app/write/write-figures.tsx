import type { ReactNode } from "react";
import { words } from "../../words/index.ts";
import { Fact } from "../parts/index.ts";
import type { Answer, Answers } from "./use-answers.ts";

/** What is written comes to: finish, margin and chance, and whether they are of what is written now ([WRT4]). Each is shown as it comes. */
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
        <Dated of={plan}>
          {plan?.value.finish == null
            ? words("parts/no-plan")
            : words("write/finish", { finish: plan.value.finish })}
        </Dated>
      </Fact>
      <Fact name={words("read/margin")}>
        <Dated of={plan}>
          {limit === undefined
            ? words("read/no-limit")
            : plan?.value.margin == null
              ? "–"
              : plan.value.margin < 0
                ? words("write/over", { time: -plan.value.margin as typeof plan.value.margin })
                : words("figures/margin", { time: plan.value.margin })}
        </Dated>
      </Fact>
      <Fact name={words("write/chance")}>
        <Dated of={within}>
          {within?.value == null ? "–" : words("figures/chance", { share: within.value })}
        </Dated>
      </Fact>
      <Fact name={words("write/as-of")}>
        {words(isBroken ? "write/no-worker" : isBehind ? "write/working" : "write/as-written")}
      </Fact>
    </dl>
  );
}

/** A figure, and that it is of the text before while it is. */
function Dated({ of, children }: { readonly of: Answer<unknown> | null; readonly children: ReactNode }) {
  const isOld = of?.isOld === true;
  return (
    <span className="write-figure" data-old={isOld || undefined}>
      {children}
      {isOld && <span className="write-before"> {words("write/of-before")}</span>}
    </span>
  );
}
