import { useState } from "react";
import type { Invitation } from "../../core/link/index.ts";
import type { Role } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { between, lengthText, NO_TIME } from "../../core/units/index.ts";
import { errorWords } from "../parts/index.ts";
import { useServices } from "../session/index.ts";
import { codeText } from "./code-text.ts";
import { QrCode } from "./qr-code.tsx";

const OFFERED: readonly { readonly role: Role; readonly title: string; readonly words: string }[] = [
  { role: "marker", title: "Marker", words: "marks steps, records, notes" },
  { role: "watcher", title: "Watcher", words: "reads only" },
  { role: "lead", title: "Lead", words: "also closes the walk and lets others in" },
];

/** For how long a code lets others in, in minutes. */
const MINUTES = 15;

/** Makes a code that lets another tablet into the walk in one role. */
export function InviteForm({ walk, now }: { readonly walk: WalkId; readonly now: Instant }) {
  const { links } = useServices();
  const [role, setRole] = useState<Role>("marker");
  const [invitation, setInvitation] = useState<Invitation | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const left = invitation ? between(now, invitation.expires) : NO_TIME;
  const invite = async () => {
    setProblem(null);
    try {
      setInvitation(await links.invite(walk, role, MINUTES));
    } catch (error) {
      setInvitation(null);
      setProblem(`The hub gave no code: ${errorWords(error)}`);
    }
  };
  return (
    <section aria-labelledby="invite">
      <h3 id="invite">Let another tablet in</h3>
      <fieldset className="choices">
        <legend className="heard-only">Role</legend>
        {OFFERED.map((offer) => (
          <label key={offer.role} className="choice">
            <input
              type="radio"
              name="role"
              checked={role === offer.role}
              onChange={() => {
                setRole(offer.role);
                setInvitation(null);
              }}
            />
            <span>
              <b>{offer.title}</b> {offer.words}
            </span>
          </label>
        ))}
      </fieldset>
      <div className="panel-acts">
        <button type="button" className="plain-button" onClick={() => void invite()}>
          Make a code
        </button>
      </div>
      {problem !== null && (
        <p className="link-problem" role="alert">
          {problem}
        </p>
      )}
      {invitation && (
        <div className="invitation" role="status" ref={intoView}>
          <QrCode text={joinAddress(invitation)} label="The address to join at, as a QR code" />
          <div>
            <p className="invitation-code">{codeText(invitation.code)}</p>
            <p className="hint">
              {left > 0
                ? `Lets in as ${invitation.role} for another ${lengthText(left)}.`
                : "This code has expired: make another."}
            </p>
            <p className="hint">
              Scan it, or open {new URL(joinAddress(invitation)).host} and choose “Join a walk”.
            </p>
          </div>
        </div>
      )}
    </section>
  );
}

/** Brings what has just appeared into view, below the fold of the panel as it may be. */
function intoView(element: HTMLElement | null): void {
  element?.scrollIntoView({ block: "nearest" });
}

const LOCAL = /^(localhost|127\.\d+\.\d+\.\d+|\[::1\])$/;

/** Where another tablet opens an invitation: as this page was reached, unless nobody else can reach it so. */
function joinAddress({ code, url }: Invitation): string {
  const { hostname, origin } = window.location;
  return LOCAL.test(hostname) ? url : `${origin}/join/${code}`;
}
