import type { CaptionLine } from "../../core/briefing/index.ts";
import { Worded } from "../parts/index.ts";

/** A caption, a sentence to a line. It is read out only while the briefing stands, so that playing is not talked over. */
export function Caption({
  lines,
  isPlaying,
}: {
  readonly lines: readonly CaptionLine[];
  readonly isPlaying: boolean;
}) {
  return (
    <div className="brief-caption" aria-live={isPlaying ? "off" : "polite"}>
      {lines.map(({ said, kind, crew, step }) => (
        <p key={`${kind} ${crew.join()} ${step}`} dir="auto" data-kind={kind}>
          <Worded message={said} />
        </p>
      ))}
    </div>
  );
}
