import { useState } from "react";
import { words } from "../../words/index.ts";
import { errorWords } from "../parts/index.ts";

/** A field for a comment on the walk, which is kept as a note in its log, after closing as well. */
export function CommentField({ onKeep }: { readonly onKeep: (text: string) => Promise<void> }) {
  const [text, setText] = useState("");
  const [said, setSaid] = useState("");
  const keep = async () => {
    try {
      await onKeep(text.trim());
      setText("");
      setSaid(words("review/comment-kept"));
    } catch (error) {
      // The text stays in the field, so that nothing is lost.
      setSaid(words("follow/not-kept", { why: errorWords(error) }));
    }
  };
  return (
    <section className="review-part review-comment">
      <label className="field">
        <span>{words("review/comment")}</span>
        <textarea rows={3} value={text} maxLength={4000} onChange={(event) => setText(event.target.value)} />
      </label>
      <button
        type="button"
        className="plain-button"
        disabled={text.trim() === ""}
        onClick={() => void keep()}
      >
        {words("review/keep-comment")}
      </button>
      <p role="status" className="hint">
        {said}
      </p>
    </section>
  );
}
