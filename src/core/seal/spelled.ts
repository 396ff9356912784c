import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";

/** A code as it is read aloud: its groups, each as the words of its letters in the spelling alphabet. */
export function spelled(code: string): readonly (readonly Message[])[] {
  return code
    .toUpperCase()
    .split("-")
    .map((group) => [...group].map((letter) => message("seal/letter", { letter })));
}
