import { useState } from "react";
import { mayLead } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { inSeconds } from "../../core/units/index.ts";
import type { LinkStatus } from "../../io/link/index.ts";
import { SidePanel } from "../follow/index.ts";
import { errorWords, Fact } from "../parts/index.ts";
import { useServices } from "../session/index.ts";
import { FollowerList } from "./follower-list.tsx";
import { InviteForm } from "./invite-form.tsx";
import "./link.css";
import { beyondWords, heardWords, onlyHereWords, unsentWords } from "./link-words.ts";
import { ShareForm } from "./share-form.tsx";

interface LinkPanelProps {
  readonly walk: WalkId;
  readonly link: LinkStatus;
  readonly petZero: Instant | null;
  /** By the clock that everybody on the walk goes by. */
  readonly now: Instant;
  readonly onClose: () => void;
}

const STATES = {
  alone: "alone",
  linking: "linking: trying to reach the hub",
  linked: "linked",
  ended: "ended",
} as const;

/** How this walk is linked with other devices, who follows it, and how to let others in. */
export function LinkPanel({ walk, link, petZero, now, onClose }: LinkPanelProps) {
  const { links, now: deviceNow } = useServices();
  const [problem, setProblem] = useState<string | null>(null);
  const { kind, role, hubName, unsent, onlyHere, heardAt, followers, beyond, clock, words, device } = link;
  const isLead = role !== null && mayLead(role) && kind !== "ended";
  const tried = (work: Promise<void>) => {
    setProblem(null);
    work.catch((error: unknown) => setProblem(`That did not work: ${errorWords(error)}`));
  };
  if (kind === "alone") {
    return (
      <SidePanel title="Link" onClose={onClose}>
        <ShareForm walk={walk} />
      </SidePanel>
    );
  }
  return (
    <SidePanel title="Link" onClose={onClose}>
      <dl className="facts">
        <Fact name="Link">{STATES[kind]}</Fact>
        <Fact name="Hub">{hubName ?? window.location.host}</Fact>
        {role !== null && <Fact name="This tablet">{role}</Fact>}
        <Fact name="Entries">{unsentWords(unsent)}</Fact>
        <Fact name="Last word">{heardWords(heardAt, deviceNow())}</Fact>
        {clock && <Fact name="Clock here">{clockWords(clock)}</Fact>}
      </dl>
      {words !== null && <p className="link-problem">{words}</p>}
      {onlyHere > 0 && <p className="link-problem">{onlyHereWords(onlyHere)}</p>}
      {beyond.length > 0 && (
        <>
          <h3>Over the gap</h3>
          <ul className="plain-list">
            {beyond.map((hub) => (
              <li key={hub.name}>{beyondWords(hub, petZero, now)}.</li>
            ))}
          </ul>
        </>
      )}
      <h3>Followers</h3>
      <FollowerList
        followers={followers}
        device={device}
        petZero={petZero}
        now={now}
        onWithdraw={isLead ? (other) => tried(links.withdraw(walk, other)) : null}
      />
      {isLead && <InviteForm walk={walk} now={now} />}
      {problem !== null && (
        <p className="link-problem" role="alert">
          {problem}
        </p>
      )}
      <h3>Leave</h3>
      <p className="hint">
        What is kept here stays here, and no more is sent or fetched.
        {unsent > 0 && ` ${unsent} ${unsent === 1 ? "entry has" : "entries have"} not been sent yet.`}
      </p>
      <div className="panel-acts">
        <button type="button" className="plain-button" onClick={() => tried(links.leave(walk))}>
          Leave the hub
        </button>
      </div>
    </SidePanel>
  );
}

/** How the clock here stands against the hub's, in words. */
function clockWords({ offset, error }: NonNullable<LinkStatus["clock"]>): string {
  const off = Math.abs(inSeconds(offset));
  const within = ` (±\u00a0${Math.max(0.01, inSeconds(error)).toFixed(2)}\u00a0s)`;
  if (off <= inSeconds(error)) return `agrees with the hub’s${within}`;
  const size =
    off < 120
      ? `${off.toFixed(1)} s`
      : off < 7200
        ? `${Math.round(off / 60)} min`
        : `${(off / 3600).toFixed(1)} h`;
  return `${size} ${offset < 0 ? "ahead of" : "behind"} the hub’s${within}`;
}
