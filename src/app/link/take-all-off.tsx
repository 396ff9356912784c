import { useState } from "react";
import type { WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { errorWords } from "../parts/index.ts";
import { useServices } from "../session/index.ts";
import { logWords } from "./log-words.ts";

interface TakeAllOffProps {
  readonly walk: WalkId;
  /** How many others are known to be in the walk. */
  readonly others: number;
  readonly onTakenOff: () => void;
}

/**
 * Takes everybody else off the walk and ends all codes, for when a code or a tablet is in wrong hands. It is asked once
 * more first, since others may be in the middle of their work.
 */
export function TakeAllOff({ walk, others, onTakenOff }: TakeAllOffProps) {
  const { links } = useServices();
  const [isAsked, setIsAsked] = useState(false);
  const [isAsking, setIsAsking] = useState(false);
  const [told, setTold] = useState<{ readonly said: string; readonly isProblem: boolean } | null>(null);
  const takeOff = async () => {
    setIsAsking(true);
    try {
      const count = await links.withdrawAll(walk);
      setTold({ said: logWords(walk).allTakenOff(count), isProblem: false });
      setIsAsked(false);
      onTakenOff();
    } catch (error) {
      setTold({ said: words("parts/did-not-work", { why: errorWords(error) }), isProblem: true });
    }
    setIsAsking(false);
  };
  return (
    <>
      {isAsked ? (
        <fieldset className="take-all-off">
          <legend>{logWords(walk).takeAllOffQuestion()}</legend>
          <p className="hint">{logWords(walk).takeAllOffHow(others)}</p>
          <div className="panel-acts">
            <button type="button" className="plain-button" disabled={isAsking} onClick={() => void takeOff()}>
              {words("link/take-all-off-now")}
            </button>
            <button type="button" className="plain-button" onClick={() => setIsAsked(false)}>
              {words("link/keep-all")}
            </button>
          </div>
        </fieldset>
      ) : (
        <div className="panel-acts">
          <button
            type="button"
            className="plain-button"
            onClick={() => {
              setTold(null);
              setIsAsked(true);
            }}
          >
            {words("link/take-all-off")}
          </button>
        </div>
      )}
      {told && (
        <p className={told.isProblem ? "link-problem" : "hint"} role={told.isProblem ? "alert" : "status"}>
          {told.said}
        </p>
      )}
    </>
  );
}
