import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { StepId } from "../units/index.ts";
import { parseDuration } from "../units/index.ts";
import type { Finding, PatchOperation } from "./finding.ts";
import { finding } from "./finding.ts";
import type { PathPart } from "./json-pointer.ts";
import { jsonPointer } from "./json-pointer.ts";
import { nearest, surelyMeant } from "./known-keys.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, members, textOf } from "./raw-file.ts";

type Kind = "crew-member" | "place" | "item" | "window" | "step" | "decision" | "supply";

/** What has ids of its own, each used once. */
type DoubledKind =
  | "crew"
  | "place"
  | "item"
  | "window"
  | "step"
  | "decision"
  | "supply"
  | "task"
  | "contingency"
  | "watch"
  | "record";

interface RawStep {
  readonly part: RawPart;
  readonly id: string | null;
  /** Index in reading order, contingencies last. */
  readonly index: number;
  readonly task: string;
  readonly getAhead: boolean;
  /** The contingency it belongs to; `null` in the main tasks. */
  readonly contingency: number | null;
}

interface RawDecision {
  readonly id: string;
  readonly step: RawStep;
  readonly outcomes: readonly string[];
}

const at = (part: RawPart) => jsonPointer(part.path);
const stepsOf = (step: RawStep): StepId[] => (step.id === null ? [] : [step.id as StepId]);
const idOf = (part: RawPart) => textOf(member(part, "id"));

function rawSteps(root: RawPart): RawStep[] {
  const found: RawStep[] = [];
  const read = (holder: RawPart, contingency: number | null) => {
    for (const task of entries(member(holder, "tasks"))) {
      for (const part of entries(member(task, "steps"))) {
        found.push({
          part,
          id: idOf(part),
          index: found.length,
          task: at(task),
          getAhead: textOf(member(task, "priority")) === "get-ahead",
          contingency,
        });
      }
    }
  };
  read(root, null);
  for (const [index, contingency] of entries(member(root, "contingencies")).entries())
    read(contingency, index);
  return found;
}

/**
 * Everything that can be wrong with a file beyond the shape of its parts: ids used twice, references that do not resolve
 * ([PRO10]), decisions used before they are made ([PRO4]), durations out of order ([PRO6]), bags inside themselves ([PRO8]),
 * steps that depend on a get-ahead ([PRO9]). Works on a file of any shape, so that all errors are reported together.
 */
export function referenceFindings(file: unknown): Finding[] {
  const root: RawPart = { value: file, path: [] };
  const found: Finding[] = [];
  const report = (
    code: string,
    part: RawPart,
    said: Message,
    steps: StepId[] = [],
    things: string[] = [],
    repair: PatchOperation[] | null = null,
  ) => {
    found.push(finding("error", code, at(part), said, { steps, things, repair }));
  };

  const unique = (
    parts: readonly RawPart[],
    kind: DoubledKind,
    keyOf: (part: RawPart) => string | null = idOf,
  ): string[] => {
    const seen = new Set<string>();
    for (const part of parts) {
      const key = keyOf(part);
      if (key === null) continue;
      if (seen.has(key))
        report(
          "file/doubled-id",
          member(part, "id"),
          message(`file/doubled-${kind}-id`, { id: String(idOf(part)) }),
          [],
          [key],
        );
      seen.add(key);
    }
    return [...seen];
  };

  const list = (key: string) => entries(member(root, key));
  const contingencies = list("contingencies");
  const steps = rawSteps(root);
  const decisions = new Map<string, RawDecision>();
  const ids: Record<Kind, readonly string[]> = {
    "crew-member": unique(list("crew"), "crew"),
    place: unique(list("places"), "place"),
    item: unique(list("items"), "item"),
    window: unique(list("windows"), "window"),
    step: unique(
      steps.map(({ part }) => part),
      "step",
    ),
    decision: unique(
      steps.map(({ part }) => member(part, "decide")).filter(({ value }) => value !== undefined),
      "decision",
    ),
    supply: unique(list("supplies"), "supply", (part) => `${textOf(member(part, "crew"))} ${idOf(part)}`),
  };
  unique(
    [root, ...contingencies].flatMap((holder) => entries(member(holder, "tasks"))),
    "task",
  );
  unique(contingencies, "contingency");
  unique(list("watches"), "watch");
  const known = Object.fromEntries(Object.entries(ids).map(([kind, all]) => [kind, new Set(all)])) as Record<
    Kind,
    Set<string>
  >;

  const resolve = (kind: Kind, part: RawPart, step: RawStep | null = null) => {
    const id = textOf(part);
    if (id === null || known[kind].has(id)) return;
    const meant = nearest(id, ids[kind]);
    const missing = meant
      ? message(`file/no-such-${kind}-meant`, { id, meant })
      : message(`file/no-such-${kind}`, { id });
    const sure = surelyMeant(id, ids[kind]);
    // The name of a decision is a key of `when`, so it is the key that must be another.
    const repair: PatchOperation[] =
      sure === null
        ? []
        : kind !== "decision"
          ? [{ op: "replace", path: at(part), value: sure }]
          : [{ op: "move", from: at(part), path: jsonPointer([...part.path.slice(0, -1), sure]) }];
    const isSure = repair.length > 0 && !isNamedAlready(part, sure);
    report("file/no-such-reference", part, missing, step ? stepsOf(step) : [], [id], isSure ? repair : null);
  };
  /** True when the list or object that holds a reference holds the other one too, which the repair would double. */
  const isNamedAlready = (part: RawPart, id: string | null) => {
    const holder = part.path
      .slice(0, -1)
      .reduce<unknown>(
        (value, key) =>
          typeof value === "object" && value !== null ? (value as Record<PathPart, unknown>)[key] : undefined,
        file,
      );
    if (Array.isArray(holder)) return holder.includes(id);
    return typeof holder === "object" && holder !== null && id !== null && Object.hasOwn(holder, id);
  };
  const resolveLocation = (part: RawPart, step: RawStep | null = null) => {
    resolve("crew-member", member(part, "crew"), step);
    resolve("place", member(part, "place"), step);
    resolve("item", member(part, "item"), step);
  };

  for (const crew of list("crew")) {
    resolve("place", member(crew, "start"));
    resolve("place", member(member(crew, "tether"), "anchor"));
  }
  for (const route of list("routes")) {
    const ends = entries(member(route, "between"));
    for (const end of ends) resolve("place", end);
    if (ends.length === 2 && ends[0]?.value === ends[1]?.value) {
      report("file/wrong-value", member(route, "between"), message("file/route-to-itself"));
    }
  }
  for (const item of list("items")) {
    resolveLocation(member(item, "start"));
    resolveLocation(member(item, "end"));
  }
  for (const side of ["start", "end"]) reportNesting(list("items"), side, report);
  for (const supply of list("supplies")) resolve("crew-member", member(supply, "crew"));
  for (const watch of list("watches")) {
    for (const by of entries(member(watch, "by"))) resolve("crew-member", by);
    resolve("step", member(watch, "from"));
    resolve("step", member(watch, "until"));
    if (parseDuration(textOf(member(watch, "every")) ?? "PT1S") === 0) {
      report("file/wrong-value", member(watch, "every"), message("file/watch-at-once"));
    }
  }
  for (const window of list("windows")) reportSpans(window, report);

  for (const step of steps) {
    const decide = member(step.part, "decide");
    const id = idOf(decide);
    if (decide.value === undefined) continue;
    const outcomes = entries(member(decide, "outcomes")).flatMap((part) => textOf(part) ?? []);
    if (id !== null && !decisions.has(id)) decisions.set(id, { id, step, outcomes });
    const expect = member(decide, "expect");
    if (textOf(expect) !== null && !outcomes.includes(String(expect.value))) {
      report(
        "decision/no-such-outcome",
        expect,
        message("decision/expected-not-there", { outcome: String(expect.value) }),
        stepsOf(step),
      );
    }
    if (new Set(outcomes).size < outcomes.length) {
      report("file/doubled-id", member(decide, "outcomes"), message("decision/outcome-twice"), stepsOf(step));
    }
  }

  const byId = new Map(steps.flatMap((step) => (step.id === null ? [] : [[step.id, step] as const])));
  for (const step of steps) {
    const { part } = step;
    const by = entries(member(part, "by"));
    for (const crew of by) resolve("crew-member", crew, step);
    if (new Set(by.map(({ value }) => value)).size < by.length) {
      report("file/doubled-id", member(part, "by"), message("file/crew-twice"), stepsOf(step));
    }
    for (const key of ["at", "to", "anchor"]) resolve("place", member(part, key), step);
    for (const window of entries(member(part, "within"))) resolve("window", window, step);
    for (const move of entries(member(part, "moves"))) {
      resolve("item", member(move, "item"), step);
      resolveLocation(member(move, "to"), step);
    }
    resolve("crew-member", member(member(part, "confirm"), "by"), step);
    unique(entries(member(part, "records")), "record");
    for (const entry of entries(member(part, "records"))) {
      const [min, max] = [member(entry, "min").value, member(entry, "max").value];
      if (typeof min === "number" && typeof max === "number" && min > max) {
        report(
          "file/wrong-value",
          member(entry, "min"),
          message("file/limits-crossed", { least: min, most: max }),
          stepsOf(step),
        );
      }
    }
    reportTime(step, report);
    for (const entry of entries(member(part, "after"))) {
      const target = typeof entry.value === "string" ? entry : member(entry, "step");
      resolve("step", target, step);
      const before = byId.get(textOf(target) ?? "");
      if (!before) continue;
      if (before === step) report("order/deadlock", target, message("order/after-itself"), stepsOf(step));
      else if (before.contingency !== null && before.contingency !== step.contingency) {
        const aside = message("order/contingency", { step: String(before.id) });
        report("order/contingency", target, aside, stepsOf(step));
      } else if (before.getAhead && before.task !== step.task) {
        const leftOut = message("order/get-ahead", { step: String(before.id) });
        report("order/get-ahead", target, leftOut, stepsOf(step));
      }
    }
    for (const [decision, outcome] of members(member(part, "when"))) {
      const made = decisions.get(decision);
      if (!made) {
        resolve("decision", { value: decision, path: outcome.path }, step);
      } else if (
        made.step.index >= step.index ||
        (made.step.contingency !== null && made.step.contingency !== step.contingency)
      ) {
        report("decision/later", outcome, message("decision/later", { decision }), stepsOf(step));
      } else if (textOf(outcome) !== null && !made.outcomes.includes(String(outcome.value))) {
        report(
          "decision/no-such-outcome",
          outcome,
          message("decision/no-such-outcome", { outcome: String(outcome.value), decision }),
          stepsOf(step),
        );
      }
    }
  }
  return found;
}

type Report = (code: string, part: RawPart, said: Message, steps?: StepId[], things?: string[]) => void;

function reportTime(step: RawStep, report: Report): void {
  const time = member(step.part, "time");
  if (time.value === undefined) {
    const isTranslation = member(step.part, "to").value !== undefined;
    if (!isTranslation) {
      report("time/missing", step.part, message("time/missing"), stepsOf(step));
    }
    return;
  }
  const [low, likely, high] = ["low", "likely", "high"].map((key) =>
    parseDuration(textOf(member(time, key)) ?? ""),
  );
  if (low == null || likely == null || high == null) return;
  if (low > likely || likely > high) {
    report("time/out-of-order", time, message("time/out-of-order"), stepsOf(step));
  }
}

function reportSpans(window: RawPart, report: Report): void {
  const spans = member(window, "spans");
  const kind = textOf(member(window, "kind"));
  if (kind === "listed" && spans.value === undefined) {
    report("window/no-spans", window, message("window/no-spans"), [], [idOf(window) ?? ""]);
  }
  for (const span of entries(spans)) {
    const [from, to] = [textOf(member(span, "from")), textOf(member(span, "to"))];
    if (from === null || to === null) continue;
    const [start, end] = [parseDuration(from) ?? Date.parse(from), parseDuration(to) ?? Date.parse(to)];
    const mixed = (parseDuration(from) === null) !== (parseDuration(to) === null);
    if (!mixed && start >= end)
      report("window/empty-span", span, message("window/empty-span"), [], [idOf(window) ?? ""]);
  }
}

function reportNesting(items: readonly RawPart[], side: string, report: Report): void {
  const within = new Map(
    items.flatMap((item) => {
      const holder = textOf(member(member(item, side), "item"));
      const id = idOf(item);
      return holder !== null && id !== null ? [[id, holder] as const] : [];
    }),
  );
  for (const item of items) {
    const first = idOf(item);
    if (first === null) continue;
    const seen = new Set<string>();
    let holder = within.get(first);
    while (holder !== undefined && holder !== first && !seen.has(holder)) {
      seen.add(holder);
      holder = within.get(holder);
    }
    if (holder === first) {
      report(
        "custody/inside-itself",
        member(item, side),
        message("custody/inside-itself", { item: first }),
        [],
        [first],
      );
    }
  }
}
