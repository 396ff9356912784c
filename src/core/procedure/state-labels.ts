import type { StateId } from "../units/index.ts";
import type { Outline } from "./outline.ts";

/** A state as a sentence names it. */
export const stateLabel = (outline: Outline, state: StateId): string =>
  outline.procedure.states.find(({ id }) => id === state)?.label ?? state;

/** A value as a sentence names it: a crew member by the call sign. */
export const valueLabel = (outline: Outline, value: string): string =>
  outline.crew.find(({ id }) => id === value)?.call ?? value;
