interface NowLabelProps {
  readonly x: number;
  /** The x of the right edge of the chart. */
  readonly end: number;
  readonly clock: string;
}

/** The present PET on the axis, kept within the chart. */
export function NowLabel({ x, end, clock }: NowLabelProps) {
  const width = clock.length * 9.5 + 14;
  const left = Math.min(Math.max(0, x - width / 2), end - width);
  return (
    <svg className="timeline-now-label" aria-hidden="true" overflow="visible">
      <rect x={left} y="3" width={width} height="26" rx="4" />
      <text x={left + width / 2} y="22" textAnchor="middle">
        {clock}
      </text>
    </svg>
  );
}
