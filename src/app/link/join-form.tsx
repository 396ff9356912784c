import { useState } from "react";
import { LIBRARY } from "../../core/library/index.ts";
import type { HubWalk } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { useServices } from "../session/index.ts";
import { AskButton, CodeField, NameField } from "./asking-fields.tsx";
import { codeText } from "./code-text.ts";
import { HubField } from "./hub-field.tsx";
import "./link.css";
import { useAsking } from "./use-asking.ts";
import { useHubAddress } from "./use-hub-address.ts";
import { WalkChoice } from "./walk-choice.tsx";

interface JoinFormProps {
  /** The code from a QR code or a link; empty otherwise. */
  readonly code: string;
  /** The walk that is meant, with the owner's code; `null` for a choice of all. */
  readonly wanted?: WalkId | null;
  /** What the button says, and what stands below it; those of a walk unless given. */
  readonly label?: string;
  readonly how?: string;
  readonly onJoined: (walk: WalkId) => void;
}

/**
 * Joins a walk that somebody else leads, with the code that they show. With the hub's own code, it joins one of all the
 * hub's walks.
 */
export function JoinForm({
  code: given,
  wanted = null,
  label = words("link/join"),
  how = words("link/join-how"),
  onJoined,
}: JoinFormProps) {
  const { links } = useServices();
  const [walks, setWalks] = useState<readonly HubWalk[] | null>(null);
  const [chosen, setChosen] = useState<WalkId | null>(wanted);
  const hub = useHubAddress();
  const asking = useAsking(
    codeText(given),
    (code, name) =>
      hub.asking((at) => links.join({ ...at, code, name, ...(chosen === null ? {} : { walk: chosen }) })),
    (outcome) => {
      if (outcome.kind === "joined") return onJoined(outcome.walk);
      const others = outcome.walks.filter(({ walk }) => walk !== LIBRARY);
      setWalks(others);
      setChosen(others[0]?.walk ?? null);
    },
  );
  const setCode = (code: string) => {
    asking.setCode(code);
    // Another code may give access to other walks.
    setWalks(null);
    setChosen(wanted);
  };
  const takeLink = () => {
    // The link of an invitation holds its code as well.
    if (hub.read?.code == null) return;
    setCode(codeText(hub.read.code));
    hub.setAddress(hub.read.origin);
  };
  return (
    <form
      className="join-form"
      onSubmit={(event) => {
        event.preventDefault();
        void asking.submit();
      }}
    >
      {hub.isNeeded && <HubField address={hub.address} onChange={hub.setAddress} onLeave={takeLink} />}
      <CodeField
        asking={{ ...asking, setCode }}
        label={words("link/code-field")}
        onLeave={() => asking.setCode(codeText(asking.code))}
      />
      <NameField asking={asking} example={words("link/join-example")} />
      {walks && <WalkChoice walks={walks} chosen={chosen} onChoose={setChosen} />}
      <AskButton asking={asking} label={label} />
      <p className="hint">{how}</p>
    </form>
  );
}
