import { english, shellWords } from "../../words/english/shell/index.ts";
import { speak } from "../../words/index.ts";
import type { OffersRequest, WriteRequest } from "./answers.ts";
import { AnswerMemory, answersOn, offersOn } from "./answers.ts";

// A mend may add a step, whose text is worded here.
speak(english, shellWords);

const memory = new AnswerMemory();

/** What is left to be answered; a newer question takes its place. */
let answering: ReturnType<typeof answersOn> | null = null;

/** The step that was asked about and whose plan is not there yet; a newer question takes its place. */
let waiting: OffersRequest | null = null;

function tellOffers(): void {
  const answer = waiting && offersOn(waiting, memory);
  if (!answer) return;
  waiting = null;
  self.postMessage(answer);
}

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
  tellOffers();
  port2.postMessage(null);
};

self.addEventListener("message", ({ data }: MessageEvent<WriteRequest | OffersRequest>) => {
  if ("step" in data) {
    waiting = data;
    return tellOffers();
  }
  const isIdle = answering === null;
  answering = answersOn(data, memory);
  if (isIdle) port2.postMessage(null);
});
