/** A button of a toolbar. */
export function Tool({
  says,
  isOff,
  about = null,
  isPressed,
  onTool,
}: {
  readonly says: string;
  readonly isOff: boolean;
  /** What it would do now, in full; `null` where its name says it. */
  readonly about?: string | null;
  /** Whether what it begins is going on; absent for one that begins nothing that lasts. */
  readonly isPressed?: boolean;
  readonly onTool: () => void;
}) {
  return (
    <button
      type="button"
      className="plain-button"
      disabled={isOff}
      aria-pressed={isPressed}
      title={about ?? undefined}
      onClick={onTool}
    >
      {says}
    </button>
  );
}
