import type { Finding, Outline, OutlineStep } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";

/** Words that are never an imperative verb, though they often open a sentence. */
const NO_VERB =
  /^(the|a|an|this|that|these|those|it|there|ev\d|iv|ground|crew|now|when|if|after|before|both|all)\b/i;

const SEVERAL = /(?:;\s*|\.\s+(?=[A-Z])|,?\s+(?:and )?then\s+)\S/;

/** Advice on the wording of steps ([CHK3]). */
export function textFindings(outline: Outline): Finding[] {
  return outline.steps.flatMap((entry) => [...wording(entry), ...receiver(outline, entry)]);
}

function wording({ step, pointer }: OutlineStep): Finding[] {
  const found: Finding[] = [];
  const steps = [step.id];
  if (SEVERAL.test(step.do)) {
    const message = `"${step.id}" seems to hold more than one action; one action a step is easier to follow and to mark.`;
    found.push(finding("advice", "text/many-actions", `${pointer}/do`, message, { steps }));
  }
  if (NO_VERB.test(step.do)) {
    const message = `"${step.id}" does not open with what to do; begin with the verb.`;
    found.push(finding("advice", "text/no-verb", `${pointer}/do`, message, { steps }));
  }
  return found;
}

/** A handover that says nothing of who receives. */
function receiver(outline: Outline, { step, pointer }: OutlineStep): Finding[] {
  if (step.by.length < 2) return [];
  return step.moves.flatMap(({ item, to }) => {
    if (!("crew" in to)) return [];
    const call = outline.crewMember(to.crew)?.call ?? to.crew;
    if (step.do.toLowerCase().includes(call.toLowerCase())) return [];
    const label = outline.item(item)?.label ?? item;
    const message = `In "${step.id}" ${label} passes to ${call}, but the text does not name ${call}.`;
    return [
      finding("advice", "text/receiver-not-named", `${pointer}/do`, message, {
        steps: [step.id],
        things: [item, to.crew],
      }),
    ];
  });
}
