import type { Message } from "../../words/index.ts";
import type { StepId } from "../units/index.ts";
import type { Finding, PatchOperation } from "./finding.ts";
import { finding } from "./finding.ts";
import { jsonPointer } from "./json-pointer.ts";
import type { RawPart } from "./raw-file.ts";

interface Concerned {
  readonly steps?: readonly StepId[];
  readonly things?: readonly string[];
  readonly repair?: readonly PatchOperation[] | null;
}

/** An error at a part of a file. */
export function errorAt(part: RawPart, code: string, said: Message, concerned: Concerned = {}): Finding {
  const { steps = [], things = [], repair = null } = concerned;
  return finding("error", code, jsonPointer(part.path), said, { steps, things, repair });
}
