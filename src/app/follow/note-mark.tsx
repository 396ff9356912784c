import { words } from "../../words/index.ts";

/** The mark of notes at a step, with how many. The word stands beside the shape. Nothing is drawn without any. */
export function NoteMark({ count }: { readonly count: number }) {
  if (count === 0) return null;
  return (
    <span className="note-mark">
      <svg aria-hidden="true" width="14" height="16" viewBox="0 0 14 16">
        <path d="M1 1h12v9l-4 5H1z M9 15v-5h4" />
      </svg>
      {words("follow/notes-here", { count })}
    </span>
  );
}
