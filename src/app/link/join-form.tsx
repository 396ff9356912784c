import { useState } from "react";
import type { HubWalk } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { useServices } from "../session/index.ts";
import { AskButton, CodeField, NameField } from "./asking-fields.tsx";
import { codeText } from "./code-text.ts";
import "./link.css";
import { useAsking } from "./use-asking.ts";
import { WalkChoice } from "./walk-choice.tsx";

interface JoinFormProps {
  /** The code as it came with a QR code or link; empty otherwise. */
  readonly code: string;
  readonly onJoined: (walk: WalkId) => void;
}

/** Joins a walk that somebody else leads, with the code that they show; or with the hub's own code one of all its walks. */
export function JoinForm({ code: given, onJoined }: JoinFormProps) {
  const { links } = useServices();
  const [walks, setWalks] = useState<readonly HubWalk[] | null>(null);
  const [chosen, setChosen] = useState<WalkId | null>(null);
  const asking = useAsking(
    codeText(given),
    (code, name) => links.join({ code, name, ...(chosen === null ? {} : { walk: chosen }) }),
    (outcome) => {
      if (outcome.kind === "joined") return onJoined(outcome.walk);
      setWalks(outcome.walks);
      setChosen(outcome.walks[0]?.walk ?? null);
    },
  );
  const setCode = (code: string) => {
    asking.setCode(code);
    // Another code may open something else.
    setWalks(null);
    setChosen(null);
  };
  return (
    <form
      className="join-form"
      onSubmit={(event) => {
        event.preventDefault();
        void asking.submit();
      }}
    >
      <CodeField
        asking={{ ...asking, setCode }}
        label="Code (nine letters and digits)"
        onLeave={() => asking.setCode(codeText(asking.code))}
      />
      <NameField asking={asking} example="for example Ground, or IV" />
      {walks && <WalkChoice walks={walks} chosen={chosen} onChoose={setChosen} />}
      <AskButton asking={asking} words="Join the walk" />
      <p className="hint">
        The lead of the walk finds a code under More, Link. The walk is then kept on this tablet too, and goes
        on here when the link is lost.
      </p>
    </form>
  );
}
