import type { ProcedureFile } from "../../core/procedure/index.ts";
import { performersBeside } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import { fieldWords } from "./field-words.ts";
import type { Draft } from "./sheet-rows.ts";

interface DraftFormProps {
  readonly file: ProcedureFile;
  readonly draft: Draft;
  readonly onBy: (by: readonly string[]) => void;
}

/**
 * Who does the step that is being written ([WRT2]). It is who does the step beside it until somebody is chosen: the first tap chooses anew,
 * each one after it adds or takes out. A tap leaves the text that is being typed where it is.
 */
export function DraftForm({ file, draft, onBy }: DraftFormProps) {
  if (draft.kind === "task")
    return (
      <section aria-label={words("write/new-task")}>
        <h2>{words("write/new-task")}</h2>
        <p className="hint">{words("write/draft-task-how")}</p>
      </section>
    );
  const { by: chosen } = draft;
  const by = chosen ?? performersBeside(file, draft.behind);
  const turned = (id: string): readonly string[] => {
    if (chosen === null) return [id];
    const others = chosen.filter((one) => one !== id);
    return others.length < chosen.length ? others : [...chosen, id];
  };
  return (
    <section aria-label={words("write/new-step")}>
      <h2>{words("write/new-step")}</h2>
      <fieldset className="write-ticks" data-field="by">
        <legend>{fieldWords("by")}</legend>
        {file.crew.map(({ id, call }) => (
          <button
            key={id}
            type="button"
            className="plain-button"
            aria-pressed={by.includes(id)}
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => {
              const next = turned(id);
              if (next.length > 0) onBy(next);
            }}
          >
            {call}
          </button>
        ))}
      </fieldset>
      {chosen === null && <p className="hint">{words("write/draft-taken-over")}</p>}
      <p className="hint">{words("write/draft-how")}</p>
    </section>
  );
}
