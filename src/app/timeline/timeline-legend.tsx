import { memo, type ReactNode } from "react";
import { words } from "../../words/index.ts";

interface TimelineLegendProps {
  readonly live: boolean;
  readonly hasWaits: boolean;
  readonly hasJoint: boolean;
  readonly hasBand: boolean;
}

/** What the shapes mean. Nothing in the chart is conveyed by colour alone. */
export const TimelineLegend = memo(function TimelineLegend({
  live,
  hasWaits,
  hasJoint,
  hasBand,
}: TimelineLegendProps) {
  return (
    <ul className="timeline-legend" aria-label={words("timeline/legend")}>
      {live ? (
        <>
          <Sign label={words("timeline/sign-as-planned")}>
            <rect className="timeline-planned" x="2" y="5" width="36" height="12" rx="2" />
          </Sign>
          <Sign label={words("timeline/sign-done")}>
            <rect className="timeline-done" x="2" y="3" width="36" height="16" rx="2" />
          </Sign>
          <Sign label={words("timeline/sign-in-work")}>
            <path className="timeline-open" d="M38 3H2V19H38l-4 -4 4 -4 -4 -4z" />
            <rect className="timeline-passed" x="2" y="15" width="18" height="4" />
          </Sign>
          <Sign label={words("timeline/sign-to-come")}>
            <rect className="timeline-to-come" x="2" y="3" width="36" height="16" rx="2" />
          </Sign>
          <Sign label={words("timeline/sign-skipped")}>
            <path className="timeline-skipped" d="M15 5l10 12m0 -12l-10 12" />
          </Sign>
        </>
      ) : (
        <Sign label={words("timeline/sign-step")}>
          <rect
            className="timeline-planned timeline-planned-wide"
            x="2"
            y="3"
            width="36"
            height="16"
            rx="2"
          />
        </Sign>
      )}
      {hasJoint && (
        <Sign label={words("timeline/sign-joint")}>
          <g className="timeline-knot">
            <line x1="20" x2="20" y1="0" y2="22" />
            <circle cx="20" cy="4" r="3" />
            <circle cx="20" cy="18" r="3" />
          </g>
        </Sign>
      )}
      {hasWaits && (
        <Sign label={words("timeline/sign-waits")}>
          <path className="timeline-legend-hatch" d="M4 18l10 -14m0 14l10 -14m0 14l10 -14" />
        </Sign>
      )}
      <Sign label={words("timeline/sign-critical")}>
        <path className="timeline-critical" d="M2 9H38M2 13H38" />
      </Sign>
      {hasBand && (
        <Sign label={words("timeline/sign-band")}>
          <rect className="timeline-band" x="2" y="1" width="36" height="20" />
        </Sign>
      )}
      <Sign label={words("timeline/sign-slack")}>
        <path className="timeline-tail" d="M2 11H36m0 -5v10" />
      </Sign>
    </ul>
  );
});

function Sign({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <li>
      <svg width="40" height="22" aria-hidden="true">
        {children}
      </svg>
      {label}
    </li>
  );
}
