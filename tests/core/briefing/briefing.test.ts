import { describe, expect, it } from "vitest";
import {
  briefingOf,
  captionAt,
  captionPlayedAt,
  chapterAfter,
  chapterBefore,
  cueAfter,
  cueAt,
  cueBefore,
  presenterAt,
  quizStops,
  stopAfter,
  storyboardOf,
} from "../../../src/core/briefing/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { flownCourseOf } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute, minutes } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { briefingOfFile, LAMP_FILE } from "./brief-course.ts";
import { bundledFiles } from "./bundled-files.ts";

const lamp = briefingOfFile(LAMP_FILE);
const said = (pet: number, grain: "step" | "task" = "step") =>
  captionAt(lamp, minutes(pet), grain).map((line) => inWords(line.said));

describe("the chapters and cues of a briefing", () => {
  it("[BRF1] are the tasks in order of start, and the PETs at which steps begin", () => {
    expect(
      lamp.chapters.map(({ number, title, start, finish, steps }) => [number, title, start, finish, steps]),
    ).toEqual([
      [1, "Fetch the lamp", minutes(0), minutes(10), ["take", "ready", "go", "out"]],
      [2, "Fit the lamp", minutes(10), minutes(25), ["fit-it", "press", "look"]],
    ]);
    expect(lamp.cues).toEqual([
      { pet: minutes(0), steps: ["take", "ready"] },
      { pet: minutes(1), steps: ["go"] },
      { pet: minutes(2), steps: ["out"] },
      { pet: minutes(10), steps: ["fit-it"] },
      { pet: minutes(20), steps: ["press"] },
      { pet: minutes(22), steps: ["look"] },
    ]);
  });

  it("[BRF1] are gone through step by step and task by task; a step that lasts is begun again first", () => {
    expect(cueAt(lamp, minutes(9))?.pet).toBe(minutes(2));
    expect(cueAfter(lamp, minutes(2))?.pet).toBe(minutes(10));
    expect(cueBefore(lamp, minutes(5))?.pet).toBe(minutes(2));
    expect(cueBefore(lamp, minutes(2))?.pet).toBe(minutes(1));
    expect(cueBefore(lamp, minutes(0))).toBeNull();
    expect(cueAfter(lamp, minutes(22))).toBeNull();
    expect(chapterAfter(lamp, minutes(0))?.task).toBe("fit");
    expect(chapterAfter(lamp, minutes(10))).toBeNull();
    expect(chapterBefore(lamp, minutes(12))?.task).toBe("fit");
    expect(chapterBefore(lamp, minutes(10))?.task).toBe("fetch");
  });

  it.each(bundledFiles())("[BRF1] have every step of %s once, joint steps too", (_name, file) => {
    const briefing = briefingOfFile(file);
    const steps = briefing.cues.flatMap((cue) => cue.steps);
    expect(steps.toSorted()).toEqual([...briefing.course.steps.keys()].toSorted());
    expect(briefing.chapters.flatMap((chapter) => chapter.steps).toSorted()).toEqual(steps.toSorted());
  });
});

describe("captions", () => {
  it("[BRF1] say who does what, who does it together, and who waits for whom", () => {
    expect(said(0)).toEqual(["EV1: Do take", "EV2: Do ready"]);
    expect(said(9.5)).toEqual(["EV1: Do out", "EV2 waits for EV1 at 1.4."]);
    expect(said(10)).toEqual(["EV1 and EV2, together: Do fit-it"]);
    expect(said(25)).toEqual([]);
  });

  it.each(["step", "task"] as const)(
    "[BRF1] while it is played say from the finish on that it is over, by %s too",
    (grain) => {
      const played = (pet: number) =>
        captionPlayedAt(lamp, minutes(pet), grain).map(({ kind, said: what }) => [kind, inWords(what)]);
      expect(played(25)).toEqual([["end", "The end."]]);
      expect(played(31)).toEqual(played(25));
      expect(played(24.99).map(([kind]) => kind)).not.toContain("end");
    },
  );

  it("[BRF1] speak of tasks where steps go by too fast to be read", () => {
    expect(said(3, "task")).toEqual(["1 Fetch the lamp: EV1 and EV2"]);
    expect(said(23, "task")).toEqual(["2 Fit the lamp: EV2"]);
  });

  it("[BRF1] say of a walk as flown what was skipped, at its cue", () => {
    const log = LogWriter.started(LAMP_FILE)
      .done(["take", 3])
      .enter("step.skipped", { step: "ready", reason: "late" }, 4);
    const briefing = briefingOf(flownCourseOf(log.ledger, minute(6)));
    expect(captionAt(briefing, minutes(4), "step").map((line) => inWords(line.said))).toContain(
      "EV2: skipped: Do ready",
    );
  });

  it("[BRF1] say of a lag, a window, a set time and a hold what is waited for", () => {
    const briefing = briefingOfFile(
      fileWith(
        [
          step("vent", "ev1", 2),
          step("open", "ev2", 1, { after: [{ step: "vent", lag: "PT5M" }] }),
          step("call", "iv", 1, { notBefore: "PT4M" }),
          step("lit", "ev1", 1, { within: ["day"] }),
        ],
        {
          format: "tetherline.procedure/2",
          windows: [{ id: "day", label: "Daylight", kind: "listed", spans: [{ from: "PT9M", to: "PT20M" }] }],
        },
      ),
    );
    expect(captionAt(briefing, minutes(3), "step").map((line) => inWords(line.said))).toEqual([
      "EV1 waits for Daylight.",
      "EV2 waits for time to pass after 1.1.",
      "IV waits for PET 0:04.",
    ]);
  });
});

describe("what the presenter sees", () => {
  it("[BRF2] is the notes in force, what comes next, the time left, and the alerts ahead", () => {
    const { notes, nextAt, nextCaption, left, alerts } = presenterAt(lamp, minutes(0.5), "step");
    expect(notes.map(({ step: id, text }) => [id, text])).toEqual([
      [null, "One carries, one waits."],
      ["take", "The edge has been in the sun."],
    ]);
    expect(nextAt).toBe(minutes(1));
    expect(nextCaption.map((line) => inWords(line.said))).toEqual(["EV1: Do take", "EV2: Do go"]);
    expect(left).toBe(minutes(24.5));
    expect(alerts.map(({ number, alert, pet }) => [number, alert.text, pet])).toEqual([
      ["1.4", "Keep clear", minutes(2)],
      ["2.1", "Listen", minutes(10)],
    ]);
  });

  it("[BRF2] comes to an end with the course", () => {
    expect(presenterAt(lamp, minutes(25), "step")).toEqual({
      notes: [],
      nextAt: null,
      nextCaption: [],
      left: minutes(0),
      alerts: [],
    });
  });
});

describe("the storyboard", () => {
  it("[BRF3] has a frame for each task, of its longest step that is not a way", () => {
    const frames = storyboardOf(lamp);
    expect(frames.map(({ number, step: id, pet, part, of }) => [number, id, pet, part, of])).toEqual([
      [1, "take", minutes(0), 1, 1],
      [2, "fit-it", minutes(10), 1, 1],
    ]);
    expect(
      frames[1]?.moment.people.map(({ crew, place, steps, items }) => [crew, place, steps, items]),
    ).toEqual([
      ["ev1", { place: "boom" }, ["fit-it"], ["lamp"]],
      ["ev2", { place: "boom" }, ["fit-it"], []],
      ["iv", null, [], []],
    ]);
    expect(frames[1]?.moment.people.map(({ line }) => line?.left ?? null)).toEqual([2, 2, null]);
  });

  it("[BRF3] has a frame for each step that its author marked, a way half walked", () => {
    const marked = structuredClone(LAMP_FILE) as ProcedureFile;
    for (const one of marked.tasks[0]?.steps ?? [])
      if (one.id === "out" || one.id === "ready") one.scene = true;
    const frames = storyboardOf(briefingOfFile(marked));
    expect(frames.map(({ step: id, pet, part, of }) => [id, pet, part, of])).toEqual([
      ["ready", minutes(0), 1, 2],
      ["out", minutes(6), 2, 2],
      ["fit-it", minutes(10), 1, 1],
    ]);
  });

  it.each(bundledFiles())("[BRF3] has each alert of %s on exactly one frame", (_name, file) => {
    const briefing = briefingOfFile(file);
    const { outline } = briefing.course;
    const shown = storyboardOf(briefing).flatMap(({ alerts }) =>
      alerts.map((one) => `${one.step} ${one.alert.text}`),
    );
    const all = [...briefing.course.steps.keys()].flatMap((id) =>
      (outline.step(id)?.step.alerts ?? []).map(({ text }) => `${id} ${text}`),
    );
    expect(all.length).toBeGreaterThan(0);
    expect(shown.toSorted()).toEqual(all.toSorted());
  });
});

describe("the quiz", () => {
  it("[BRF7] stops before a joint step that people come to from different steps, and knows the answer", () => {
    const stops = quizStops(lamp);
    expect(stops.map(({ pet, step: id, crew }) => [pet, id, crew])).toEqual([
      [minutes(10), "fit-it", ["ev1", "ev2"]],
    ]);
    expect(
      stops[0]?.answers.map(({ person: { crew, place, items }, waited }) => [crew, place, items, waited]),
    ).toEqual([
      ["ev1", { place: "boom" }, ["lamp"], null],
      ["ev2", { place: "boom" }, [], minutes(1)],
    ]);
    expect(stopAfter(stops, minutes(3))?.step).toBe("fit-it");
    expect(stopAfter(stops, minutes(10))).toBeNull();
  });

  it("[BRF7] stops before a joint step that the walk begins with", () => {
    const both = briefingOfFile(fileWith([task("a", [step("hold", ["ev1", "ev2"], 2)])]));
    expect(quizStops(both).map(({ step: id }) => id)).toEqual(["hold"]);
  });
});
