import type { FarHub } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { beyondWords } from "./link-words.ts";

/** What the hubs beyond a gap can have seen, always in sight while there are any. */
export function BeyondStrip({
  hubs,
  petZero,
  now,
}: {
  readonly hubs: readonly FarHub[];
  readonly petZero: Instant | null;
  readonly now: Instant;
}) {
  if (hubs.length === 0) return null;
  return (
    <section className="beyond-strip" aria-label="Over the gap">
      {hubs.map((hub) => (
        <span key={hub.name} data-state={hub.state}>
          {beyondWords(hub, petZero, now)}
        </span>
      ))}
    </section>
  );
}
