import type { WalkId } from "../../core/units/index.ts";
import { saidBy, words } from "../../words/index.ts";
import type { Admission } from "../admission/index.ts";
import { type BeyondBoard, beyondDocument } from "../beyond/index.ts";
import type { PresenceBoard } from "../presence/index.ts";
import { eventText, type FanOut } from "../stream/index.ts";

/** Between two signs of life, in ms. */
const BEAT = 15_000;
/** How often it is looked who went away, in ms. */
const LOOKED_EVERY = 3_000;
/** Changes are gathered for so long, in ms. */
const GATHERED = 200;
/** How much longer changes are gathered for each pair of subscribers, in ms: a list of all goes to all, which grows with the square of their number. */
const GATHERED_PER_PAIR = 0.1;

/** What is told. */
export interface NewsSources {
  readonly admission: Admission;
  readonly fanOut: FanOut;
  readonly presence: PresenceBoard;
  readonly beyond: BeyondBoard;
}

/**
 * Tells the followers who is there and how the hubs beyond are, gives signs of life, and ends the streams of tokens that
 * are dead. Returns a function that ends it. `tell` hears of trouble.
 */
export function startNews(sources: NewsSources, tell: (words: string) => void): () => void {
  const { admission, fanOut, presence, beyond } = sources;
  const gathering = new Map<WalkId, NodeJS.Timeout>();

  const sendPresence = async (walk: WalkId) => {
    gathering.delete(walk);
    try {
      await fanOut.send(walk, eventText("presence", await presence.of(walk)));
    } catch (cause) {
      tell(words("hub/presence-not-told", { why: saidBy(cause) }));
    }
  };
  const gather = (walk: WalkId) => {
    if (gathering.has(walk) || fanOut.subscribersOf(walk) === 0) return;
    const pause = GATHERED + GATHERED_PER_PAIR * fanOut.subscribersOf(walk) ** 2;
    gathering.set(walk, setTimeout(() => void sendPresence(walk), pause).unref());
  };

  const ends = [
    admission.listen({ ended: (member) => fanOut.end(member), changed: gather }),
    presence.listen(gather),
    beyond.listen((walk) => void fanOut.send(walk, eventText("beyond", beyondDocument(beyond.of(walk))))),
  ];
  const beating = setInterval(() => {
    fanOut.beat((member) => admission.isGood(member));
    presence.beat();
  }, BEAT).unref();
  const looking = setInterval(() => presence.look(), LOOKED_EVERY).unref();

  return () => {
    for (const end of ends) end();
    clearInterval(beating);
    clearInterval(looking);
    for (const timeout of gathering.values()) clearTimeout(timeout);
  };
}
