import { words } from "../../words/index.ts";
import type { Asking } from "./use-asking.ts";

/** The field for the code. */
export function CodeField({
  asking: { code, setCode },
  label,
  onLeave,
}: {
  readonly asking: Asking;
  readonly label: string;
  /** Called when the field is left. */
  readonly onLeave?: () => void;
}) {
  return (
    <label className="field">
      <span>{label}</span>
      <input
        className="code-input"
        value={code}
        maxLength={20}
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        onChange={(event) => setCode(event.target.value)}
        onBlur={onLeave}
      />
    </label>
  );
}

/** The field for the name of the tablet's user. */
export function NameField({
  asking: { name, setName },
  example,
}: {
  readonly asking: Asking;
  readonly example: string;
}) {
  return (
    <label className="field">
      <span>{words("link/who-uses")}</span>
      <input
        value={name}
        maxLength={60}
        autoComplete="off"
        placeholder={example}
        onChange={(event) => setName(event.target.value)}
      />
    </label>
  );
}

/** The problem, if there is one, and the button that asks the hub. */
export function AskButton({
  asking: { code, name, isAsking, problem },
  label,
}: {
  readonly asking: Asking;
  readonly label: string;
}) {
  return (
    <>
      {problem !== null && (
        <p className="link-problem" role="alert">
          {problem}
        </p>
      )}
      <div className="panel-acts">
        <button
          type="submit"
          className="main-button"
          disabled={isAsking || code.trim() === "" || name.trim() === ""}
        >
          {isAsking ? words("link/asking") : label}
        </button>
      </div>
    </>
  );
}
