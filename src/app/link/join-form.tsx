import type { WalkId } from "../../core/units/index.ts";
import { useServices } from "../session/index.ts";
import { AskButton, CodeField, NameField } from "./asking-fields.tsx";
import { codeText } from "./code-text.ts";
import "./link.css";
import { useAsking } from "./use-asking.ts";

interface JoinFormProps {
  /** The code as it came with a QR code or link; empty otherwise. */
  readonly code: string;
  readonly onJoined: (walk: WalkId) => void;
}

/** Joins a walk that somebody else leads, with the code that they show. */
export function JoinForm({ code: given, onJoined }: JoinFormProps) {
  const { links } = useServices();
  const asking = useAsking(
    codeText(given),
    (code, name) => links.join({ code, name }),
    ({ walk }) => onJoined(walk),
  );
  return (
    <form
      className="join-form"
      onSubmit={(event) => {
        event.preventDefault();
        void asking.submit();
      }}
    >
      <CodeField
        asking={asking}
        label="Code (nine letters and digits)"
        onLeave={() => asking.setCode(codeText(asking.code))}
      />
      <NameField asking={asking} example="for example Ground, or IV" />
      <AskButton asking={asking} words="Join the walk" />
      <p className="hint">
        The lead of the walk finds a code under More, Link. The walk is then kept on this tablet too, and goes
        on here when the link is lost.
      </p>
    </form>
  );
}
