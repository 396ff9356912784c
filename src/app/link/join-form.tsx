import { useState } from "react";
import type { WalkId } from "../../core/units/index.ts";
import { storedFollower, storeFollower, useServices } from "../session/index.ts";
import { codeText } from "./code-text.ts";
import "./link.css";

interface JoinFormProps {
  /** The code as it came with a QR code or link; empty otherwise. */
  readonly code: string;
  readonly onJoined: (walk: WalkId) => void;
}

/** Joins a walk that somebody else leads, with the code that they show. */
export function JoinForm({ code: given, onJoined }: JoinFormProps) {
  const { links } = useServices();
  const [code, setCode] = useState(() => codeText(given));
  const [name, setName] = useState(() => storedFollower() ?? "");
  const [isAsking, setIsAsking] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const join = async () => {
    setIsAsking(true);
    setProblem(null);
    const outcome = await links.join({ code: code.trim(), name: name.trim() });
    setIsAsking(false);
    if (outcome.kind !== "joined") return setProblem(outcome.words);
    storeFollower(name.trim());
    onJoined(outcome.walk);
  };
  return (
    <form
      className="join-form"
      onSubmit={(event) => {
        event.preventDefault();
        void join();
      }}
    >
      <label className="field">
        <span>Code (nine letters and digits)</span>
        <input
          className="code-input"
          value={code}
          maxLength={20}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          onChange={(event) => setCode(event.target.value)}
          onBlur={() => setCode(codeText(code))}
        />
      </label>
      <label className="field">
        <span>Who uses this tablet</span>
        <input
          value={name}
          maxLength={60}
          autoComplete="off"
          placeholder="for example Ground, or IV"
          onChange={(event) => setName(event.target.value)}
        />
      </label>
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
          {isAsking ? "Asking the hub…" : "Join the walk"}
        </button>
      </div>
      <p className="hint">
        The lead of the walk finds a code under More, Link. The walk is then kept on this tablet too, and goes
        on here when the link is lost.
      </p>
    </form>
  );
}
