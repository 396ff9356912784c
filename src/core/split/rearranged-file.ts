import { happensBefore, networkOf } from "../order/index.ts";
import { isPlaced, stepIdsOf, translationStep } from "../place/index.ts";
import type {
  Fields,
  Location,
  Outline,
  OutlineStep,
  ProcedureFile,
  Step,
  StepTime,
} from "../procedure/index.ts";
import { activityOf, outlineOf, parseProcedure } from "../procedure/index.ts";
import type { CrewId, PlaceId } from "../units/index.ts";
import { formatDuration } from "../units/index.ts";
import type { Layout, Split } from "./layout.ts";
import { activitiesOf } from "./relaid.ts";
import type { SplitCase } from "./split-case.ts";
import type { SplitModel } from "./split-model.ts";
import type { Stand } from "./stand.ts";
import { substitutionFor } from "./stand.ts";

type FileTask = ProcedureFile["tasks"][number];
type FileStep = FileTask["steps"][number];

/** A step as it is to stand in the file, with those who do it. */
interface Placed {
  readonly entry: OutlineStep;
  readonly lanes: readonly number[];
  readonly written: FileStep;
}

/**
 * The procedure file of a split: tasks in their order, other performers, and the translations between laid by the
 * quickest ways. What the others let go of is waited for by name where nothing else makes sure of it. `layout` must have
 * laid the split out. Returns `null` when no procedure can be made of it.
 */
export function rearrangedFile(
  splitCase: SplitCase,
  model: SplitModel,
  split: Split,
  layout: Layout,
): ProcedureFile | null {
  const { file, outline } = splitCase;
  const stands = standsIn(model, split);
  const tasks = [...split.order].map((number) => {
    const task = file.tasks[number] as FileTask;
    const steps = task.steps.flatMap((written): Placed[] => {
      const entry = outline.step(written.id);
      if (!entry) return [];
      const stand = stands.get(entry.index);
      return stand
        ? [
            {
              entry,
              lanes: stand.by.map((crew) => outline.lane(crew)),
              written: inStand(written, entry.step, stand, outline),
            },
          ]
        : [{ entry, lanes: entry.performers, written }];
    });
    return { task, steps };
  });
  const laid = withTranslations(splitCase, model, tasks);
  const next: ProcedureFile = { ...file, tasks: laid };
  return withWaits(next, splitCase, { model, split, layout });
}

/** The stands that are not the file's, by the reading order index of their steps. */
function standsIn({ steps, groups }: SplitModel, { choice }: Split): ReadonlyMap<number, Stand> {
  const found = new Map<number, Stand>();
  for (const [group, { steps: members, options }] of groups.entries()) {
    const option = options[choice[group] ?? 0] ?? [];
    for (const [seat, member] of members.entries()) {
      const step = steps[member];
      const stand = step?.writtenStands[option[seat] ?? 0];
      if (step && stand && option[seat] !== 0) found.set(step.index, stand);
    }
  }
  return found;
}

/** A step as written, done by others: they get what it hands out, and those who did it are among who else could. */
function inStand(written: FileStep, step: Step, stand: Stand, { procedure }: Outline): FileStep {
  const substitution = substitutionFor(step, stand);
  const instead = (crew: CrewId) => substitution(crew) ?? crew;
  const isOfCrew = new Set<string>(
    procedure.states.flatMap(({ id, values }) => (values === "crew" ? [id] : [])),
  );
  const valuesInstead = (values: Step["needs"]) =>
    Object.fromEntries(
      Object.entries(values ?? {}).map(([state, value]) => [
        state,
        isOfCrew.has(state) && value !== "free" ? instead(value as CrewId) : value,
      ]),
    );
  const fields: Fields = {
    by: [...stand.by],
    ...(stand.time ? { time: writtenTime(stand.time) } : {}),
    or: step.or.map((one) =>
      one.by.join(" ") === stand.by.join(" ")
        ? writtenStand({ by: step.by, time: stand.time && (step.time ?? null) })
        : writtenStand({ by: one.by, time: one.time ?? (stand.time && (step.time ?? null)) }),
    ),
    ...(step.moves.length > 0
      ? { moves: step.moves.map(({ item, to }) => ({ item, to: locationInstead(to, instead) })) }
      : {}),
    ...(step.needs ? { needs: valuesInstead(step.needs) } : {}),
    ...(step.sets ? { sets: valuesInstead(step.sets) } : {}),
  };
  return { ...written, ...fields } as FileStep;
}

function locationInstead(location: Location, instead: (crew: CrewId) => CrewId): Location {
  if ("crew" in location) return { crew: instead(location.crew) };
  return "crews" in location ? { crews: location.crews.map(instead) } : location;
}

const writtenStand = ({ by, time }: Stand) => (time ? { by: [...by], time: writtenTime(time) } : [...by]);

const writtenTime = ({ low, likely, high }: StepTime) =>
  low === likely && likely === high
    ? formatDuration(likely)
    : { low: formatDuration(low), likely: formatDuration(likely), high: formatDuration(high) };

interface PlacedTask {
  readonly task: FileTask;
  readonly steps: readonly Placed[];
}

/** The tasks with the translations that are to be laid: some of the file's that still lead on, and new ones where one is missing. */
function withTranslations(
  splitCase: SplitCase,
  { relaid, needOf }: SplitModel,
  tasks: readonly PlacedTask[],
): FileTask[] {
  const { outline, begun } = splitCase;
  const activities = activitiesOf(splitCase);
  const dropped = new Set<number>();
  const before = new Map<number, FileStep[]>();
  const taken = stepIdsOf(outline);
  const all = tasks.flatMap(({ steps }) => steps);
  for (const [lane, member] of outline.crew.entries()) {
    const own = all.filter(({ lanes }) => lanes.includes(lane));
    for (const [position, { entry }] of own.entries()) {
      if (!relaid.has(entry.index)) continue;
      const behind = own.slice(position + 1).filter((one) => !relaid.has(one.entry.index));
      const leadsOn = activities.every((active) => {
        const next = behind.find((one) => active[one.entry.index]);
        return !active[entry.index] || (next !== undefined && needAt(next, lane) === entry.step.to);
      });
      if (!leadsOn) dropped.add(entry.index);
    }
    if (!isPlaced(member)) continue;
    const places = activities.map((): PlaceId | null => member.start ?? null);
    for (const placed of own) {
      const { entry } = placed;
      if (dropped.has(entry.index)) continue;
      const need = relaid.has(entry.index) ? null : needAt(placed, lane);
      const isAt = (index: number) => activities[index]?.[entry.index] !== true;
      // Whoever has begun a step got there.
      const goes =
        need !== null &&
        !begun.has(entry.step.id) &&
        places.some((place, index) => !isAt(index) && place !== null && place !== need);
      if (goes) {
        const going = translationStep(outline, taken, { member, to: need, when: entry.step.when });
        taken.add(going.id);
        before.set(entry.index, [...(before.get(entry.index) ?? []), going]);
      }
      for (const index of places.keys()) {
        if (isAt(index)) continue;
        places[index] = entry.step.to ?? need ?? places[index] ?? null;
      }
    }
  }
  return tasks.map(({ task, steps }) => ({
    ...task,
    steps: steps.flatMap(({ entry, written }) =>
      dropped.has(entry.index) ? [] : [...(before.get(entry.index) ?? []), written],
    ),
  }));

  function needAt({ entry, lanes }: Placed, lane: number): PlaceId | null {
    return needOf(entry, Math.min(lanes.indexOf(lane), entry.performers.length - 1));
  }
}

/**
 * The file with a link for each two steps of which the later one uses what the earlier one changes, where no order makes
 * sure of it. `null` when it cannot be read.
 */
function withWaits(
  file: ProcedureFile,
  { outcomes, begun }: SplitCase,
  { model, split, layout }: { readonly model: SplitModel; readonly split: Split; readonly layout: Layout },
): ProcedureFile | null {
  const { procedure } = parseProcedure(file);
  if (!procedure) return null;
  const outline = outlineOf(procedure);
  const order = happensBefore(networkOf(outline, activityOf(outline, outcomes, false)));
  const added = new Map<string, string[]>();
  for (const [from, to] of handedOn(model, split, layout)) {
    const [earlier, later] = [model.steps[from], model.steps[to]];
    const [a, b] = [earlier && outline.step(earlier.id), later && outline.step(later.id)];
    if (!a || !b || begun.has(b.step.id) || order.before(a.index, b.index)) continue;
    added.set(b.step.id, [...(added.get(b.step.id) ?? []), a.step.id]);
  }
  if (added.size === 0) return file;
  return {
    ...file,
    tasks: file.tasks.map((task) => ({
      ...task,
      steps: task.steps.map((step) => {
        const more = added.get(step.id);
        return more ? { ...step, after: [...(step.after ?? []), ...more] } : step;
      }),
    })) as ProcedureFile["tasks"],
  };
}

/** Two steps each of which the later one must wait for what the earlier one does with an item or a state. */
function handedOn(
  { steps, groups, groupOf, seatOf, tasks }: SplitModel,
  { order, choice }: Split,
  layout: Layout,
) {
  const pairs: (readonly [number, number])[] = [];
  const changedBy = new Map<number, number>();
  const neededBy = new Map<number, number[]>();
  const laid = [...order]
    .flatMap((task) => tasks[task]?.steps ?? [])
    .sort((a, b) => (layout.start[a] ?? 0) - (layout.start[b] ?? 0));
  for (const step of laid) {
    const group = groupOf[step] ?? 0;
    const stand = groups[group]?.options[choice[group] ?? 0]?.[seatOf[step] ?? 0] ?? 0;
    const uses = steps[step]?.stands[stand]?.uses ?? new Int32Array();
    for (let use = 0; use < uses.length; use += 3) {
      const thing = uses[use] as number;
      const changed = changedBy.get(thing);
      if (changed !== undefined) pairs.push([changed, step]);
      if (uses[use + 1] === uses[use + 2]) {
        neededBy.set(thing, [...(neededBy.get(thing) ?? []), step]);
        continue;
      }
      for (const needed of neededBy.get(thing) ?? []) pairs.push([needed, step]);
      neededBy.set(thing, []);
      changedBy.set(thing, step);
    }
  }
  return pairs;
}
