import type { Instant } from "../../core/units/index.ts";
import type { LinkStatus } from "../../io/link/index.ts";
import { words } from "../../words/index.ts";
import { beyondWords, isHub, seenWords } from "./link-words.ts";

/**
 * What the followers beyond a gap can have seen: the hub that this hub sends to, and hubs that link with this one. It
 * is always visible while there are any.
 */
export function BeyondStrip({
  link: { beyond, followers },
  petZero,
  now,
}: {
  readonly link: Pick<LinkStatus, "beyond" | "followers">;
  readonly petZero: Instant | null;
  readonly now: Instant;
}) {
  const hubs = followers.filter(isHub);
  if (beyond.length + hubs.length === 0) return null;
  return (
    <section className="beyond-strip" aria-label={words("link/over-the-gap")}>
      {beyond.map((hub) => (
        <span key={hub.name} data-away={hub.state === "linked" ? undefined : true}>
          {beyondWords(hub, petZero, now)}
        </span>
      ))}
      {hubs.map((hub) => (
        <span key={hub.device} data-away={hub.present ? undefined : true}>
          {hub.name} {seenWords(hub, petZero, now)}
        </span>
      ))}
    </section>
  );
}
