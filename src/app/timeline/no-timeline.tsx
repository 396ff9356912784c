import type { Plan } from "../../core/plan/index.ts";
import { inWords, words } from "../../words/index.ts";

/** Why a plan has no timeline. */
export function NoTimeline({ plan }: { readonly plan: Pick<Plan, "findings"> }) {
  return (
    <>
      <p>{words("timeline/none")}</p>
      <ul>
        {plan.findings.map(({ code, pointer, message }) => (
          <li key={`${code} ${pointer}`}>{inWords(message)}</li>
        ))}
      </ul>
    </>
  );
}
