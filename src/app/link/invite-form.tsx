import { useState } from "react";
import type { Invitation } from "../../core/link/index.ts";
import type { Role } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { between, NO_TIME } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { errorWords } from "../parts/index.ts";
import { QrCode } from "../qr-code/index.ts";
import { useServices } from "../session/index.ts";
import { codeText } from "./code-text.ts";
import { InvitationList } from "./invitation-list.tsx";
import { logWords } from "./log-words.ts";

/** How long a code is valid, in minutes. */
const MINUTES = 15;

/** How many tablets a code may let in, at most; a hub allows more. */
const MOST_DEVICES = 50;

/** Makes a code that lets another tablet join the walk in one role. */
export function InviteForm({ walk, now }: { readonly walk: WalkId; readonly now: Instant }) {
  const { links } = useServices();
  const [role, setRole] = useState<Role>(() => logWords(walk).offered[0] ?? "watcher");
  const [devices, setDevices] = useState(1);
  const [invitation, setInvitation] = useState<Invitation | null>(null);
  const [made, setMade] = useState(0);
  const [problem, setProblem] = useState<string | null>(null);
  const left = invitation ? between(now, invitation.expires) : NO_TIME;
  const invite = async () => {
    setProblem(null);
    try {
      setInvitation(await links.invite(walk, role, MINUTES, devices));
      setMade((before) => before + 1);
    } catch (error) {
      setInvitation(null);
      setProblem(words("link/no-code", { why: errorWords(error) }));
    }
  };
  return (
    <section aria-labelledby="invite">
      <h3 id="invite">{words("link/invite")}</h3>
      <fieldset className="choices">
        <legend className="heard-only">{words("link/role")}</legend>
        {logWords(walk).offered.map((offer) => (
          <label key={offer} className="choice">
            <input
              type="radio"
              name="role"
              checked={role === offer}
              onChange={() => {
                setRole(offer);
                setInvitation(null);
              }}
            />
            <span>
              <b>{words(`link/offer-${offer}`)}</b> {logWords(walk).mayWith(offer)}
            </span>
          </label>
        ))}
      </fieldset>
      <label className="field">
        <span>{words("link/how-many-tablets")}</span>
        <input
          type="number"
          min={1}
          max={MOST_DEVICES}
          value={devices}
          onChange={({ target }) => {
            setDevices(Math.min(MOST_DEVICES, Math.max(1, Math.floor(target.valueAsNumber) || 1)));
            setInvitation(null);
          }}
        />
      </label>
      <div className="panel-acts">
        <button type="button" className="plain-button" onClick={() => void invite()}>
          {words("link/make-code")}
        </button>
      </div>
      {problem !== null && (
        <p className="link-problem" role="alert">
          {problem}
        </p>
      )}
      {invitation && (
        <div className="invitation" role="status" ref={intoView}>
          <QrCode text={joinAddress(invitation)} label={words("link/qr-code")} />
          <div>
            <p className="invitation-code">{codeText(invitation.code)}</p>
            <p className="hint">{words("link/code-for", { count: invitation.devices })}</p>
            <p className="hint">
              {left > 0 ? words(`link/lets-in-as-${invitation.role}`, { left }) : words("link/code-expired")}
            </p>
            <p className="hint">{logWords(walk).scanOrOpen(new URL(joinAddress(invitation)).host)}</p>
          </div>
        </div>
      )}
      <InvitationList walk={walk} now={now} made={made} />
    </section>
  );
}

/** Scrolls an element that has just appeared into view, since it may be below the visible part of the panel. */
function intoView(element: HTMLElement | null): void {
  element?.scrollIntoView({ block: "nearest" });
}

const LOCAL = /^(localhost|127\.\d+\.\d+\.\d+|\[::1\])$/;

/**
 * The address at which another tablet opens an invitation: the address of this page, unless other devices cannot reach
 * it.
 */
function joinAddress({ code, url }: Invitation): string {
  const { hostname, origin } = window.location;
  return LOCAL.test(hostname) ? url : `${origin}/join/${code}`;
}
