import { useDeferredValue, useMemo, useRef } from "react";
import type { ContingencyEffect } from "../../core/effect/index.ts";
import { contingencyEffect } from "../../core/effect/index.ts";
import type { Contingency, Outline } from "../../core/procedure/index.ts";
import { minus } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { wouldFinish } from "./would-finish.ts";

interface ContingencyFiguresProps {
  readonly state: WalkState;
  readonly contingency: Contingency;
}

/** How often the forecast with a contingency is made anew while nothing is entered, in ms of PET. */
const ANEW_EVERY = 5_000;

/** What a contingency is for, and what it would come to if it were brought in now ([OFF4]). A tap is drawn before it. */
export function ContingencyFigures({ state: present, contingency }: ContingencyFiguresProps) {
  const state = useDeferredValue(present);
  const { ledger, pet, phase } = state;
  const beat = pet === null ? null : Math.floor(pet / ANEW_EVERY);
  const latest = useRef(state);
  latest.current = state;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the state changes every second, the effect need not.
  const effect = useMemo(() => contingencyEffect(latest.current, contingency), [ledger, contingency, beat]);
  return (
    <>
      {contingency.when !== undefined && (
        <p className="contingency-when">{words("panel/contingency-when", { when: contingency.when })}</p>
      )}
      {phase !== "closed" && (
        <p className="hint">
          {pet === null
            ? words("panel/contingency-before-start")
            : effect === null
              ? words("panel/contingency-unknown")
              : effectWords(effect, ledger.inForce.outline, minus(effect.ends, pet))}
        </p>
      )}
    </>
  );
}

const homeWords = (home: ContingencyEffect["home"]) =>
  home === null ? words("panel/contingency-no-home") : words("panel/contingency-home", { time: home });

function effectWords(effect: ContingencyEffect, outline: Outline, time: ContingencyEffect["ends"]): string {
  const { behind, ends, home } = effect;
  const step = outline.step(behind)?.number ?? behind;
  return [
    words("panel/contingency-ends", { step, time, at: ends }),
    ...(outline.crew.some(({ station }) => station === "outside") ? [homeWords(home)] : []),
    wouldFinish(effect),
  ].join(" ");
}
