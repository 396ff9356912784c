import { words } from "../../words/index.ts";

/** What the marks of a step's strip mean, with the marks themselves. */
export function StripLegend({ hasPlan }: { readonly hasPlan: boolean }) {
  return (
    <ul className="strip-legend">
      {hasPlan && (
        <li>
          <svg width="34" height="14" aria-hidden="true" className="step-strip-planned">
            <rect x="1" y="2" width="32" height="10" rx="2" />
          </svg>
          {words("learn/legend-planned")}
        </li>
      )}
      <li>
        <svg width="34" height="14" aria-hidden="true" className="step-strip-found">
          <rect x="1" y="2" width="32" height="10" rx="2" />
        </svg>
        {words(hasPlan ? "learn/legend-found" : "learn/legend-quantiles")}
      </li>
      <li>
        <svg width="14" height="14" aria-hidden="true" className="step-strip-mark" data-mode="live">
          <circle cx="7" cy="7" r="4.5" />
        </svg>
        {words("learn/legend-live")}
      </li>
      <li>
        <svg width="14" height="14" aria-hidden="true" className="step-strip-mark" data-mode="rehearsal">
          <circle cx="7" cy="7" r="4.5" />
        </svg>
        {words("learn/legend-rehearsal")}
      </li>
      <li>
        <svg width="14" height="14" aria-hidden="true" className="step-strip-mark" data-mode="live">
          <path d="M2 2L13 7L2 12Z" />
        </svg>
        {words("learn/legend-broken-off")}
      </li>
      <li>
        <svg width="22" height="22" aria-hidden="true" className="step-strip-mark" data-mode="live">
          <circle cx="11" cy="11" r="4.5" />
          <circle className="step-strip-ring" cx="11" cy="11" r="9" />
        </svg>
        {words("learn/legend-outlier")}
      </li>
      <li>
        <svg width="6" height="18" aria-hidden="true">
          <line className="step-strip-likely" x1="3" x2="3" y1="0" y2="18" />
        </svg>
        {words("learn/legend-scale")}
      </li>
    </ul>
  );
}
