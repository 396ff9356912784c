/** A button of a toolbar. */
export function Tool({
  says,
  isOff,
  about = null,
  onTool,
}: {
  readonly says: string;
  readonly isOff: boolean;
  /** What it would do now, in full; `null` where its name says it. */
  readonly about?: string | null;
  readonly onTool: () => void;
}) {
  return (
    <button
      type="button"
      className="plain-button"
      disabled={isOff}
      title={about ?? undefined}
      onClick={onTool}
    >
      {says}
    </button>
  );
}
