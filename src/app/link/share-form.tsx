import { useState } from "react";
import type { WalkId } from "../../core/units/index.ts";
import { storedFollower, storeFollower, useServices } from "../session/index.ts";

/** Brings a walk that is kept on this device alone to the hub that serves this page; whoever has the owner's code leads it. */
export function ShareForm({ walk }: { readonly walk: WalkId }) {
  const { links } = useServices();
  const [code, setCode] = useState("");
  const [name, setName] = useState(() => storedFollower() ?? "");
  const [isAsking, setIsAsking] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const share = async () => {
    setIsAsking(true);
    setProblem(null);
    const outcome = await links.share({ walk, ownerCode: code.trim(), name: name.trim() });
    setIsAsking(false);
    if (outcome.kind === "joined") storeFollower(name.trim());
    else setProblem(outcome.words);
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void share();
      }}
    >
      <p>
        This walk is on this device alone. Brought to the hub at <b>{window.location.host}</b>, it can be
        followed and marked from other tablets; everything here is still kept here first.
      </p>
      <label className="field">
        <span>Who uses this tablet</span>
        <input
          value={name}
          maxLength={60}
          autoComplete="off"
          placeholder="for example Ground"
          onChange={(event) => setName(event.target.value)}
        />
      </label>
      <label className="field">
        <span>Owner’s code of the hub</span>
        <input
          className="code-input"
          value={code}
          maxLength={20}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          onChange={(event) => setCode(event.target.value)}
        />
      </label>
      <p className="hint">The hub shows it on its console when it starts.</p>
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
          {isAsking ? "Asking the hub…" : "Share this walk"}
        </button>
      </div>
    </form>
  );
}
