import type { Entry } from "../../../src/core/log/index.ts";

/**
 * The part of the reference fold that comes before any walk: which entries count, in what order, which of them are struck,
 * and at what time each happened. Slow and obvious on purpose, and written without the code it is held against.
 */
export interface ReferenceLog {
  /** One entry of each source and id, in the order of the log. */
  readonly ordered: readonly Entry[];
  /** Key of every entry that lost against another of its source and id, one for each other statement. */
  readonly conflicting: readonly string[];
  /** Key of each struck entry with the strike that counts, in the order of the strikes. */
  readonly struck: ReadonlyMap<string, Entry>;
  /** Keys of the strikes that strike nothing and are not struck themselves. */
  readonly idle: ReadonlySet<string>;
}

/** Source and id, which no two different entries share ([LOG1]). */
export const nameOf = ({ wire }: Entry): string => `${wire.source} ${wire.id}`;

/** What counts in a set of entries that came in any order, any number of times ([LOG3]). */
export function referenceLog(entries: readonly Entry[], walk: string | null): ReferenceLog {
  const forms = new Map<string, Entry[]>();
  for (const entry of entries) forms.set(nameOf(entry), [...(forms.get(nameOf(entry)) ?? []), entry]);
  const ordered: Entry[] = [];
  const conflicting: string[] = [];
  for (const name of [...forms.keys()].sort()) {
    const sameName = [...(forms.get(name) ?? [])].sort((a, b) => textOrder(sorted(a.wire), sorted(b.wire)));
    ordered.push(...sameName.slice(0, 1));
    const statements = new Set(sameName.map(statementText));
    for (let other = 1; other < statements.size; other += 1) conflicting.push(name);
  }
  ordered.sort(
    ({ wire: a }, { wire: b }) =>
      textOrder(a.hlc, b.hlc) ||
      textOrder(a.source, b.source) ||
      textOrder(a.sequence, b.sequence) ||
      textOrder(a.id, b.id),
  );
  return { ordered, conflicting, ...referenceStrikes(ordered, walk) };
}

const textOrder = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1);

/** JSON with the keys of every object sorted. */
function sorted(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(sorted).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const members = Object.entries(value).filter(([, member]) => member !== undefined);
  return `{${members
    .sort(([a], [b]) => textOrder(a, b))
    .map(([key, member]) => `${JSON.stringify(key)}:${sorted(member)}`)
    .join(",")}}`;
}

/** What an entry states, whatever stamp it bears. */
function statementText({ wire }: Entry): string {
  const { hlcmade, seal: _, ...rest } = wire;
  const stated = Object.entries(rest).filter(([attribute]) => !attribute.startsWith("hub"));
  return sorted({ ...Object.fromEntries(stated), hlc: hlcmade ?? wire.hlc });
}

/** Passes over all strikes, until a pass changes nothing, which of them are struck by one that is in force. */
function referenceStrikes(
  ordered: readonly Entry[],
  walk: string | null,
): Pick<ReferenceLog, "struck" | "idle"> {
  const strikes = ordered.flatMap((entry, position) => {
    const { fact } = entry.read;
    if (fact?.name !== "entry.struck") return [];
    const target = ordered.findIndex((one) => nameOf(one) === `${fact.source} ${fact.id}`);
    const isOpening = ordered[target]?.read.fact?.name === "walk.opened";
    return [
      {
        entry,
        target: `${fact.source} ${fact.id}`,
        isAble: isOf(entry, walk) && target >= 0 && target < position && !isOpening,
      },
    ];
  });
  const able = strikes.filter(({ isAble }) => isAble);
  let inForce = able;
  for (;;) {
    const taken = new Set(inForce.map(({ target }) => target));
    const next = able.filter(({ entry }) => !taken.has(nameOf(entry)));
    const isSettled = next.length === inForce.length && next.every((one, index) => one === inForce[index]);
    inForce = next;
    if (isSettled) break;
  }
  const struck = new Map<string, Entry>();
  for (const { entry, target } of inForce) if (!struck.has(target)) struck.set(target, entry);
  const effective = new Set([...struck.values()].map(nameOf));
  const without = strikes.map(({ entry }) => nameOf(entry)).filter((name) => !effective.has(name));
  return { struck, idle: new Set(without.filter((name) => !struck.has(name))) };
}

/** Whether an entry is of the walk that was opened; until one was, every entry is. */
const isOf = ({ wire }: Entry, walk: string | null): boolean => walk === null || wire.subject === walk;

/** The device of a source: what stands below `/devices/x` belongs to `/devices/x`. */
export function referenceDevice(source: string): string {
  const [empty, devices, name] = source.split("/");
  return empty === "" && devices === "devices" && name ? `/devices/${name}` : source;
}

/**
 * When each entry happened, by its name, in milliseconds since 1970: as its device had it, plus what the device last found
 * its clock to be behind the hub's, or for what it entered before it first looked, what it found then. A jump of the clock
 * makes a difference between what was entered before it and after it. Half a second is let pass.
 */
export function referenceTimes(
  ordered: readonly Entry[],
  { struck, walk }: { struck: ReadonlyMap<string, Entry>; walk: string | null },
): Map<string, number> {
  const counts = (entry: Entry) => isOf(entry, walk) && !struck.has(nameOf(entry));
  const looks = ordered.flatMap((entry, position) => {
    const { fact } = entry.read;
    if (fact?.name !== "clock.compared" || !counts(entry)) return [];
    return [{ device: referenceDevice(entry.wire.source), position, offset: Math.round(fact.offset * 1000) }];
  });
  const jumps: { device: string; position: number; at: number; by: number }[] = [];
  for (const [position, entry] of ordered.entries()) {
    const { fact } = entry.read;
    if (fact?.name !== "clock.jumped" || !counts(entry)) continue;
    const device = referenceDevice(entry.wire.source);
    const [at, by] = [Date.parse(entry.wire.time), Math.round(fact.by * 1000)];
    const before = jumps.filter((jump) => jump.device === device).at(-1);
    // Two tabs of one device notice the same jump.
    const isKnown = before && Math.abs(before.at - at) < 5000 && Math.abs(before.by - by) < 1000;
    if (!isKnown) jumps.push({ device, position, at, by });
  }
  const jumpsOf = (device: string, from: number, to: number) =>
    jumps
      .filter((jump) => jump.device === device && jump.position > from && jump.position <= to)
      .reduce((sum, { by }) => sum + by, 0);
  const times = ordered.map((entry, place): [string, number] => {
    const from = referenceDevice(entry.wire.source);
    const own = looks.filter(({ device }) => device === from);
    const look = own.filter(({ position }) => position <= place).at(-1) ?? own[0];
    const at = Date.parse(entry.wire.time);
    const jumped = look
      ? jumpsOf(from, look.position, place) - jumpsOf(from, place, look.position)
      : jumpsOf(from, -1, place);
    const offset = (look?.offset ?? 0) - jumped;
    return [nameOf(entry), Math.abs(offset) > 500 ? at + offset : at];
  });
  return new Map(times);
}
