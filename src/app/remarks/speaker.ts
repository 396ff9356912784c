import { StoredChoice } from "../session/index.ts";

/** Who remarks on this device, as they last said. */
export interface Speaker {
  readonly name: string;
  readonly role: string;
}

const NOBODY: Speaker = { name: "", role: "" };

const choice = new StoredChoice<Speaker>("tetherline.speaker", NOBODY);

/** Who last remarked on this device; with empty texts when nobody did. */
export function storedSpeaker(): Speaker {
  const { name, role } = choice.current();
  return { name: typeof name === "string" ? name : "", role: typeof role === "string" ? role : "" };
}

/** Keeps who remarks on this device. */
export const storeSpeaker = (speaker: Speaker): void => choice.choose(speaker);
