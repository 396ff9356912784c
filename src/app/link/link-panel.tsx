import { type ReactNode, useState } from "react";
import { mayLead } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { inSeconds } from "../../core/units/index.ts";
import type { LinkStatus } from "../../io/link/index.ts";
import type { Message } from "../../words/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { errorWords, Fact } from "../parts/index.ts";
import { useServices } from "../session/index.ts";
import { FollowerList } from "./follower-list.tsx";
import { InviteForm } from "./invite-form.tsx";
import "./link.css";
import { beyondWords, entriesWords, heardWords } from "./link-words.ts";
import { logWords } from "./log-words.ts";
import { ShareForm } from "./share-form.tsx";
import { TakeAllOff } from "./take-all-off.tsx";

interface LinkPanelProps {
  readonly walk: WalkId;
  readonly link: LinkStatus;
  readonly petZero: Instant | null;
  /** The present by the clock that everybody on the walk uses. */
  readonly now: Instant;
  /** The voice code of the walk; absent for none. */
  readonly code?: ReactNode;
  readonly onClose: () => void;
}

/** How this walk is linked with other devices, who follows it, and how to let others in. */
export function LinkPanel({ walk, link, petZero, now, code = null, onClose }: LinkPanelProps) {
  const { links, now: deviceNow } = useServices();
  const [problem, setProblem] = useState<string | null>(null);
  const [timesEmptied, setTimesEmptied] = useState(0);
  const {
    kind,
    role,
    hubName,
    unsent,
    onlyHere,
    heardAt,
    followers,
    beyond,
    clock,
    words: said,
    device,
    key,
  } = link;
  const others = followers.filter((follower) => follower.device !== device).length;
  const isLead = role !== null && mayLead(role) && kind !== "ended";
  const tried = (work: Promise<void>) => {
    setProblem(null);
    work.catch((error: unknown) => setProblem(words("parts/did-not-work", { why: errorWords(error) })));
  };
  if (kind === "alone") {
    return (
      <SidePanel title={words("link/title")} onClose={onClose}>
        <ShareForm walk={walk} />
        {code}
      </SidePanel>
    );
  }
  return (
    <SidePanel title={words("link/title")} onClose={onClose}>
      <dl className="facts">
        <Fact name={words("link/title")}>{words(`link/state-${kind}`)}</Fact>
        {hubName !== null && <Fact name={words("link/hub")}>{hubName}</Fact>}
        {role !== null && <Fact name={words("link/role-here")}>{words(`parts/role-${role}`)}</Fact>}
        {key !== null && <Fact name={words("link/key-here")}>{logWords(walk).key(key)}</Fact>}
        <Fact name={words("link/entries")}>{entriesWords(link)}</Fact>
        <Fact name={words("link/last-word")}>{heardWords(heardAt, deviceNow())}</Fact>
        {clock && <Fact name={words("link/clock-here")}>{clockWords(clock)}</Fact>}
      </dl>
      {said !== null && <p className="link-problem">{inWords(said)}</p>}
      {onlyHere > 0 && <p className="link-problem">{logWords(walk).onlyHere(onlyHere)}</p>}
      {beyond.length > 0 && (
        <>
          <h3>{words("link/beyond")}</h3>
          <ul className="plain-list">
            {beyond.map((hub) => (
              <li key={hub.name}>{words("link/beyond-hub", { what: beyondWords(hub, petZero, now) })}</li>
            ))}
          </ul>
        </>
      )}
      <h3>{words("link/followers")}</h3>
      <FollowerList
        walk={walk}
        followers={followers}
        device={device}
        petZero={petZero}
        now={now}
        onWithdraw={isLead ? (other) => tried(links.withdraw(walk, other)) : null}
      />
      {isLead && (
        <>
          <TakeAllOff walk={walk} others={others} onTakenOff={() => setTimesEmptied((times) => times + 1)} />
          {/* The codes that were shown have ended with everybody else. */}
          <InviteForm key={timesEmptied} walk={walk} now={now} />
        </>
      )}
      {code}
      {problem !== null && (
        <p className="link-problem" role="alert">
          {problem}
        </p>
      )}
      <h3>{words("link/leave-title")}</h3>
      <p className="hint">
        {unsent > 0 ? words("link/leave-unsent", { count: unsent }) : words("link/leave-how")}
      </p>
      <div className="panel-acts">
        <button type="button" className="plain-button" onClick={() => tried(links.leave(walk))}>
          {words("link/leave")}
        </button>
      </div>
    </SidePanel>
  );
}

/** How far the clock of this device is off the hub's, in words. */
function clockWords({ offset, error }: NonNullable<LinkStatus["clock"]>): string {
  const off = Math.abs(inSeconds(offset));
  const within = { error: Math.max(0.01, inSeconds(error)) };
  if (off <= inSeconds(error)) return words("link/clock-agrees", within);
  return words(offset < 0 ? "link/clock-ahead" : "link/clock-behind", { ...within, size: sizeOf(off) });
}

/** The error of a clock in the most readable unit. */
function sizeOf(seconds: number): Message {
  if (seconds < 120) return message("link/seconds", { size: seconds });
  if (seconds < 7200) return message("link/minutes", { size: Math.round(seconds / 60) });
  return message("link/hours", { size: seconds / 3600 });
}
