import { message } from "../../words/index.ts";
import { crewHolding, custodyAtStart, holderOf } from "../custody/index.ts";
import type { Finding, Outline, Step } from "../procedure/index.ts";
import { finding, mayBeEnglish } from "../procedure/index.ts";
import type { CrewId } from "../units/index.ts";
import type { WrittenStep } from "./written-steps.ts";

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

/** Returns advice on the wording of steps ([CHK3]); what looks at English words does so only where the author may write English ([WRD4]). */
export function textFindings(outline: Outline, steps: readonly WrittenStep[]): Finding[] {
  // In reading order, which is near enough for wording: where an item comes from tells a hand-over from a step that takes it up.
  const isEnglish = mayBeEnglish(outline.procedure.language);
  const custody = new Map(custodyAtStart(outline.procedure));
  return steps.flatMap((entry) => {
    const passed = entry.step.moves.filter(({ item, to }) => {
      const holder = holderOf(custody, item);
      custody.set(item, to);
      return holder !== null && isHandOver(entry.step, crewHolding(holder), crewHolding(to));
    });
    return [
      ...(isEnglish ? wording(entry) : []),
      ...receiver(outline, entry, passed),
      ...selfConfirmed(outline, entry),
      ...unconfirmed(outline, entry, passed, isEnglish),
    ];
  });
}

/** True when one of those who do a step has the item before, and another one of them afterwards. */
const isHandOver = ({ by }: Step, before: readonly CrewId[], after: readonly CrewId[]) =>
  before.some((crew) => by.includes(crew)) &&
  after.some((crew) => by.includes(crew) && !before.includes(crew));

type Passed = readonly Step["moves"][number][];

/** Returns a finding for a step whose only performer also confirms it. */
function selfConfirmed(outline: Outline, { step, pointer }: WrittenStep): Finding[] {
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

/** Matches steps that join two things, which nobody sees to be joined but who looks. */
const MATES = /^(?:mate|connect|plug in|couple|dock|berth)\b/i;

/** Returns advice for a hand-over or a mate that nobody confirms ([CHK3]). */
function unconfirmed(
  outline: Outline,
  { step, pointer }: WrittenStep,
  [passed]: Passed,
  isEnglish: boolean,
): Finding[] {
  if (step.confirm) return [];
  const concerned = { steps: [step.id] };
  if (passed) {
    const item = outline.item(passed.item)?.label ?? passed.item;
    const said = message("text/hand-over-not-confirmed", { step: step.id, item });
    return [finding("advice", "text/not-confirmed", pointer, said, { ...concerned, things: [passed.item] })];
  }
  if (!isEnglish || !MATES.test(step.do)) return [];
  const said = message("text/mate-not-confirmed", { step: step.id });
  return [finding("advice", "text/not-confirmed", pointer, said, concerned)];
}

function wording({ step, pointer }: WrittenStep): Finding[] {
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
function receiver(outline: Outline, { step, pointer }: WrittenStep, passed: Passed): Finding[] {
  return passed.flatMap(({ item, to }) => {
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
