import { describe, expect, it } from "vitest";
import type { HoldUp, WaitOn } from "../../../src/core/course/index.ts";
import { heldByMessage, waitMessage } from "../../../src/core/course/index.ts";
import type { CrewId, Duration, Instant, StepId, WindowId } from "../../../src/core/units/index.ts";
import { NO_TIME } from "../../../src/core/units/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { outlineFrom, step } from "../procedure-builder.ts";

const outline = outlineFrom([step("a", "ev1", 1)], {
  windows: [{ id: "dark", label: "Darkness", kind: "darkness" }],
});
const crew = (id: string) => id as CrewId;
const at = "a" as StepId;
const dark = "dark" as WindowId;
const minutes = (count: number) => (count * 60_000) as Duration;

describe("a wait in words", () => {
  it("[WRD1] is one sentence for each cause, in the plan, on the timeline and in the review", () => {
    const said = (on: WaitOn | null) =>
      inWords(waitMessage(outline, { crew: crew("ev2"), step: at, from: minutes(4), to: minutes(10), on }));
    expect(said(null)).toBe("EV2 waits 6 min for no known reason");
    expect(said({ crew: [crew("iv"), crew("ev1")], step: at })).toBe("EV2 waits 6 min for EV1 and IV");
    expect(said({ crew: [], step: at })).toBe("EV2 waits 6 min after a step of their own");
    expect(said({ lag: at })).toBe("EV2 waits 6 min for the time after step 1.1");
    expect(said({ notBefore: minutes(10) })).toBe(
      "EV2 waits 6 min until PET 0:10, before which the step does not start",
    );
    expect(said({ window: dark })).toBe("EV2 waits 6 min for Darkness");
    expect(said({ hold: true })).toBe("EV2 waits 6 min for the hold");
  });
});

describe("what holds somebody up, in words", () => {
  const someone = (id: string): HoldUp => ({
    kind: "crew",
    crew: crew(id),
    step: at,
    last: at,
    until: null,
    lag: NO_TIME,
  });
  const said = (holdUps: readonly HoldUp[], petZero: Instant | null = null) => {
    const message = heldByMessage(outline, holdUps, petZero);
    return message && inWords(message);
  };

  it("[WRD1] names each crew member once, and is null for nothing", () => {
    expect(said([someone("ev1"), someone("ev1"), someone("iv")])).toBe("waits for EV1 and IV");
    expect(said([])).toBeNull();
  });

  it("[WRD1] is a whole sentence for each thing that is waited for, and several stand beside one another", () => {
    const window: HoldUp = { kind: "window", window: dark, until: minutes(134) };
    const lag: HoldUp = { kind: "lag", step: at, until: minutes(5) };
    const zero = Date.UTC(2031, 3, 2, 9, 15) as Instant;
    expect(said([window])).toBe("waits for Darkness at 2:14");
    expect(said([window], zero)).toBe("waits for Darkness at 2:14 (11:29 UTC)");
    expect(said([lag])).toBe("waits for time to pass until 0:05");
    expect(said([{ kind: "notBefore", until: minutes(5) }])).toBe("waits for its time, PET 0:05");
    expect(said([{ kind: "hold", since: minutes(1), until: null }])).toBe("waits for the hold to be lifted");
    expect(said([someone("ev1"), lag])).toBe("waits for EV1; waits for time to pass until 0:05");
  });
});
