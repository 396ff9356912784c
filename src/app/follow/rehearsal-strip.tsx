import { words } from "../../words/index.ts";
import type { Rehearsal } from "./use-rehearsal.ts";
import { PACES } from "./use-rehearsal.ts";

/** Says that this is a rehearsal, with controls that start and stop it and set its pace. */
export function RehearsalStrip({
  rehearsal,
  phase,
}: {
  readonly rehearsal: Rehearsal;
  readonly phase: string;
}) {
  return (
    <section className="rehearsal-strip" aria-label={words("follow/rehearsal")}>
      <span>{words("follow/rehearsal-how")}</span>
      <button
        type="button"
        className="plain-button"
        disabled={phase !== "running"}
        aria-pressed={rehearsal.playing}
        onClick={() => rehearsal.play(!rehearsal.playing)}
      >
        {words(rehearsal.playing ? "follow/pause" : "follow/play")}
      </button>
      <fieldset className="paces">
        <legend className="heard-only">{words("follow/pace")}</legend>
        {PACES.map((pace) => (
          <label key={pace}>
            <input
              type="radio"
              name="pace"
              checked={rehearsal.pace === pace}
              onChange={() => rehearsal.setPace(pace)}
            />
            <span>{pace}×</span>
          </label>
        ))}
      </fieldset>
    </section>
  );
}
