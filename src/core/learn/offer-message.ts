import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { LearnedStep } from "./learn-from.ts";

/** Returns in a sentence why a time is offered for a step, or why it is not ([LRN3], [LRN4]). */
export function offerMessage({ offer, observations, isRehearsedOnly }: LearnedStep): Message {
  const count = observations.length;
  switch (offer) {
    case "no-evidence":
      return message("learn/no-evidence");
    case "one-walk":
      return message("learn/one-walk");
    case "hardly-moved":
      return message("learn/hardly-moved");
    case "disagree":
      return message("learn/disagree");
    case "offered":
      return isRehearsedOnly
        ? message("learn/offered-rehearsed", { count })
        : message("learn/offered", { count });
  }
}
