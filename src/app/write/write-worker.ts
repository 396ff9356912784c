import { CheckMemory } from "../../core/check/index.ts";
import { english, shellWords } from "../../words/english/shell/index.ts";
import { speak } from "../../words/index.ts";
import type { WriteRequest } from "./answers.ts";
import { answersOn } from "./answers.ts";

// A mend may add a step, whose text is worded here.
speak(english, shellWords);

const memory = new CheckMemory();

/** What is left to be answered; a newer question takes its place. */
let answering: ReturnType<typeof answersOn> | null = null;

// A message to itself lets a question that has come meanwhile go first.
const { port1, port2 } = new MessageChannel();
port1.onmessage = () => {
  const asked = answering;
  // What fails ends here as well: the next question may be one that can be answered.
  answering = null;
  const next = asked?.next();
  if (!next || next.done) return;
  answering = asked;
  if (next.value) self.postMessage(next.value);
  port2.postMessage(null);
};

self.addEventListener("message", ({ data }: MessageEvent<WriteRequest>) => {
  const isIdle = answering === null;
  answering = answersOn(data, memory);
  if (isIdle) port2.postMessage(null);
});
