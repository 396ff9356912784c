import { useState } from "react";
import type { HeardCode, Verification } from "../../core/seal/index.ts";
import { heardCode, spelled, typedGroups } from "../../core/seal/index.ts";
import { inWords, words } from "../../words/index.ts";

type Coded = Pick<Verification, "code" | "entries" | "checkpoints">;

interface HeardFieldProps {
  readonly coded: Coded;
  /** What it means that the code is the same; unless given, that both sites hold what is here. */
  readonly same?: string;
}

/** Where the code that another site reads aloud is typed in: it is the same, or the groups that differ are named ([SEL6]). */
export function HeardField({ coded, same }: HeardFieldProps) {
  const [typed, setTyped] = useState("");
  const heard = heardCode(coded, typed);
  return (
    <div className="heard-code">
      <label className="field">
        <span>{words("seal/heard-label")}</span>
        <input
          className="code-input"
          value={typed}
          maxLength={24}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <div role="status">
        {heard ? (
          <Heard coded={coded} heard={heard} typed={typed} {...(same === undefined ? {} : { same })} />
        ) : (
          <p className="hint">{words("seal/heard-letters")}</p>
        )}
      </div>
    </div>
  );
}

interface HeardProps extends HeardFieldProps {
  readonly heard: HeardCode;
  readonly typed: string;
}

function Heard({ coded, same, heard: { entries, differs }, typed }: HeardProps) {
  if (entries !== null) {
    return (
      <p className="heard-same">
        {entries === coded.entries
          ? (same ?? words("seal/heard-same", { entries }))
          : words("seal/heard-same-then", { entries, all: coded.entries })}
      </p>
    );
  }
  const here = coded.code.split("-");
  const there = typedGroups(typed) ?? [];
  return (
    <div className="seal-unsound">
      <p>{words("seal/heard-differs")}</p>
      <ul className="plain-list">
        {differs.map((group) => (
          <li key={group}>
            {words("seal/heard-group", {
              group,
              here: lettersSaid(here[group - 1]),
              there: lettersSaid(there[group - 1]),
            })}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** A group with the words of its letters. */
function lettersSaid(letters = ""): string {
  const said = spelled(letters).flat().map(inWords).join(" ");
  return words("seal/heard-letters-said", { letters, said });
}
