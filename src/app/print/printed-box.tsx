/** A box on paper: ticked for what is done, empty to be ticked by hand. */
export function PrintedBox({
  isTicked = false,
  className = "",
}: {
  readonly isTicked?: boolean;
  readonly className?: string;
}) {
  return (
    <span className={`print-box ${className}`.trim()} data-ticked={isTicked || undefined}>
      {isTicked && "✓"}
    </span>
  );
}
