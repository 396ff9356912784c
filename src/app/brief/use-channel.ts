import { useEffect, useRef, useState } from "react";
import type { ShownPet } from "../worksite/index.ts";
import type { Audience, Presented, Said } from "./presenting.ts";
import { channelOf, heard, NOBODY_YET, readSaid, SILENCE } from "./presenting.ts";

/** How often a presenter tells where it stands, in milliseconds, so that its silence means something. */
const BEAT = 1_000;

/** Tells the windows of the audience where this one stands. Returns true while another window presents the briefing too. */
export function usePresenter(
  briefing: string,
  shown: ShownPet,
  stands: Omit<Presented, "kind" | "presenter" | "pet">,
): boolean {
  const [presenter] = useState(() => crypto.randomUUID());
  const [otherAt, setOtherAt] = useState<number | null>(null);
  const tell = useRef<() => void>(() => {});
  const latest = useRef(stands);
  latest.current = stands;
  useEffect(() => {
    const channel = new BroadcastChannel(channelOf(briefing));
    const say = (said: Said) => channel.postMessage(said);
    tell.current = () => say({ kind: "stands", presenter, pet: shown.pet(), ...latest.current });
    channel.onmessage = ({ data }) => {
      const said = readSaid(data);
      if (said?.kind === "asks") tell.current();
      else if (said && said.presenter !== presenter)
        setOtherAt(said.kind === "closed" ? null : performance.now());
    };
    tell.current();
    const beat = setInterval(() => {
      tell.current();
      setOtherAt((at) => (at !== null && performance.now() - at > SILENCE ? null : at));
    }, BEAT);
    const close = () => say({ kind: "closed", presenter });
    window.addEventListener("pagehide", close);
    return () => {
      clearInterval(beat);
      window.removeEventListener("pagehide", close);
      close();
      channel.close();
    };
  }, [briefing, presenter, shown]);
  const { speed, isPlaying, isAsked } = stands;
  // biome-ignore lint/correctness/useExhaustiveDependencies: these are what is told.
  useEffect(() => tell.current(), [speed, isPlaying, isAsked]);
  // While it plays, the others move by their own clocks; they are told of everything else at once.
  useEffect(() => (isPlaying ? undefined : shown.subscribe(() => tell.current())), [isPlaying, shown]);
  return otherAt !== null;
}

/** What a window of the audience knows of its presenter, and whether that one is silent. It asks when it opens. */
export function useAudience(
  briefing: string,
  onStands: (presented: Presented) => void,
): Audience & { readonly isSilent: boolean } {
  const [audience, setAudience] = useState<Audience>(NOBODY_YET);
  const [now, setNow] = useState(() => performance.now());
  useEffect(() => {
    const channel = new BroadcastChannel(channelOf(briefing));
    channel.onmessage = ({ data }) => {
      const said = readSaid(data);
      if (said) setAudience((was) => heard(was, said, performance.now()));
    };
    channel.postMessage({ kind: "asks" } satisfies Said);
    const beat = setInterval(() => setNow(performance.now()), BEAT);
    return () => {
      clearInterval(beat);
      channel.close();
    };
  }, [briefing]);
  const { followed } = audience;
  useEffect(() => {
    if (followed) onStands(followed);
  }, [followed, onStands]);
  return { ...audience, isSilent: followed !== null && now - audience.heardAt > SILENCE };
}
