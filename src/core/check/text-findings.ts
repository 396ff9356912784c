import { message } from "../../words/index.ts";
import type { Finding, Outline, OutlineStep } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";

/** Matches words that often open a sentence but are never an imperative verb. */
const NO_VERB =
  /^(the|a|an|this|that|these|those|it|you|we|they|there|ev\d|iv|ground|crew|now|when|if|after|before|both|all)\b/i;

/**
 * Matches nouns such as "Turning …" and "Removal of …". Verbs such as "Bring" do not match because they have no vowel
 * before the ending.
 */
const NOUN = /^(?:[a-z]*[aeiouy][a-z]*ing|\w+(?:al|tion|ment|ance) of)\b/i;

const SEVERAL = /(?:;\s*|\.\s+(?=[A-Z])|,?\s+(?:and )?then\s+)\S/;

/**
 * Matches a second verb with an object. It lists only verbs that are hardly ever nouns or adjectives in a procedure.
 */
const SECOND_VERB =
  /\band (?:attach|close|connect|detach|disconnect|demate|inspect|insert|install|loosen|mate|open|pull|push|release|remove|retrieve|stow|take|tighten|translate|undo|unlock|unscrew|verify) [\w"“]/i;

/** Returns advice on the wording of steps ([CHK3]). */
export function textFindings(outline: Outline): Finding[] {
  return stepsWithPointers(outline).flatMap((entry) => [
    ...wording(entry),
    ...receiver(outline, entry),
    ...selfConfirmed(outline, entry),
  ]);
}

type Worded = Pick<OutlineStep, "step" | "pointer">;

/** Returns all steps, including those of contingencies, which are read out like the others. */
function stepsWithPointers({ steps, procedure }: Outline): Worded[] {
  const aside = procedure.contingencies.flatMap(({ tasks }, index) =>
    tasks.flatMap((task, taskIndex) =>
      task.steps.map((step, stepIndex) => ({
        step,
        pointer: `/contingencies/${index}/tasks/${taskIndex}/steps/${stepIndex}`,
      })),
    ),
  );
  return [...steps, ...aside];
}

/** Returns a finding for a step whose only performer also confirms it. */
function selfConfirmed(outline: Outline, { step, pointer }: Worded): Finding[] {
  const by = step.confirm?.by;
  if (by === undefined || step.by.some((crew) => crew !== by)) return [];
  const call = outline.crewMember(by)?.call ?? by;
  const itself = message("text/confirms-itself", { step: step.id, crew: call });
  return [
    finding("advice", "text/confirms-itself", `${pointer}/confirm/by`, itself, {
      steps: [step.id],
      things: [by],
    }),
  ];
}

function wording({ step, pointer }: Worded): Finding[] {
  const found: Finding[] = [];
  const steps = [step.id];
  if (SEVERAL.test(step.do) || SECOND_VERB.test(step.do)) {
    const many = message("text/many-actions", { step: step.id });
    found.push(finding("advice", "text/many-actions", `${pointer}/do`, many, { steps }));
  }
  if (NO_VERB.test(step.do) || NOUN.test(step.do)) {
    const noVerb = message("text/no-verb", { step: step.id });
    found.push(finding("advice", "text/no-verb", `${pointer}/do`, noVerb, { steps }));
  }
  return found;
}

/** Returns a finding for each handover whose text does not name the receiver. */
function receiver(outline: Outline, { step, pointer }: Worded): Finding[] {
  if (step.by.length < 2) return [];
  return step.moves.flatMap(({ item, to }) => {
    if (!("crew" in to)) return [];
    const call = outline.crewMember(to.crew)?.call ?? to.crew;
    if (step.do.toLowerCase().includes(call.toLowerCase())) return [];
    const label = outline.item(item)?.label ?? item;
    const unnamed = message("text/receiver-not-named", { step: step.id, item: label, crew: call });
    return [
      finding("advice", "text/receiver-not-named", `${pointer}/do`, unnamed, {
        steps: [step.id],
        things: [item, to.crew],
      }),
    ];
  });
}
