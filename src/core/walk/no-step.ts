import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { StepId } from "../units/index.ts";
import type { Ledger } from "./ledger.ts";

/** Returns why a step is not in the plan: an amendment took it out, or there never was one. */
export function noStep({ amendments }: Pick<Ledger, "amendments">, step: StepId): Message {
  const isDropped = amendments.some(({ steps }) =>
    steps.some((one) => one.step === step && one.how === "dropped"),
  );
  return message(isDropped ? "walk/step-dropped" : "walk/no-step", { step });
}
