import type { Fields, Finding, ListName, ProcedureFile } from "../procedure/index.ts";
import { parseProcedure } from "../procedure/index.ts";
import { FILE_LISTS, heldBy, homesOf, LISTS } from "./list-table.ts";
import type { Placed, Roll } from "./members.ts";
import { asListed, ownFields, rollOf } from "./members.ts";
import type { MergeSide, Three } from "./merge-fields.ts";
import { ABSENT, each, mergedFields, mergedValue, shown } from "./merge-fields.ts";
import { mergedOrder, orderAfter } from "./merge-order.ts";
import { mergedWords } from "./merge-words.ts";
import { lettingGo } from "./references.ts";
import { sameJson } from "./same-json.ts";

/** Something that the two sides changed in different ways ([CHG5]); `null` on a side that does not have it. */
export interface Conflict {
  readonly list: ListName | "head";
  /** The member's id; of an order the task or contingency whose members stand in it. `null` for the file itself. */
  readonly id: string | null;
  /**
   * The field; `task` or `contingency` for where a member stands, `order` for a ring of order wishes (the sides are then ids in
   * order), `null` for the whole member: dropped here and changed there, or added twice.
   */
  readonly field: string | null;
  readonly base: unknown;
  readonly ours: unknown;
  readonly theirs: unknown;
}

/** The merged file with what reading it has to say, or what has to be decided first. */
export type Merged = { /** The conflicts that were decided. */ readonly decided: readonly Conflict[] } & (
  | { readonly file: ProcedureFile; readonly conflicts: readonly []; readonly findings: readonly Finding[] }
  | { readonly file: null; readonly conflicts: readonly Conflict[]; readonly findings: readonly [] }
);

/** What somebody decided about conflicts, by {@link conflictName}: whose version is taken. */
export type MergeDecisions = ReadonlyMap<string, MergeSide>;

/** Tells the conflicts of one merge apart. */
export const conflictName = ({ list, id, field }: Pick<Conflict, "list" | "id" | "field">): string =>
  JSON.stringify([list, id, field]);

/** A member of the merged file, before it is put in its place. */
interface MergedMember {
  readonly own: Fields;
  readonly holder: string | null;
}

/** Words that both sides added, with a base that has none of them yet: two who translate different texts of a step do not get in each other's way. */
function fromNone({ base, ours, theirs }: Three<Placed | null>): Three<Placed | null> {
  return { base: base ?? (ours && theirs && { ...ours, member: { id: ours.id } }), ours, theirs };
}

/** The merge of one procedure: collects what cannot be decided. */
class Merge {
  readonly conflicts: Conflict[] = [];
  readonly decided: Conflict[] = [];
  readonly #decisions: MergeDecisions;
  readonly #files: Three<Fields>;
  readonly #rolls = new Map<ListName, Three<Roll>>();
  readonly #members = new Map<ListName, Map<string, MergedMember>>();
  /** Lists whose ids do not tell their members apart: they are merged as one value each. */
  readonly #whole = new Set<ListName>();

  constructor(files: Three<Fields>, decisions: MergeDecisions) {
    this.#files = files;
    this.#decisions = decisions;
    for (const list of LISTS) {
      const rolls = each(files, (file) => rollOf(file, list));
      if (rolls.base.doubled || rolls.ours.doubled || rolls.theirs.doubled) this.#whole.add(list);
      else this.#rolls.set(list, rolls);
    }
  }

  file(): ProcedureFile {
    const gone = this.#goneSteps();
    for (const list of this.#rolls.keys()) this.#mergeMembers(list, gone);
    this.#checkHolders();
    const lists = FILE_LISTS.flatMap((list): [string, unknown][] => {
      if (this.#whole.has(list)) return [];
      const members = this.#ordered(list, null);
      const isListed = mergedValue(each(this.#files, (file) => Object.hasOwn(file, list)));
      return members.length > 0 || (isListed !== "undecided" && isListed.value)
        ? [[list, asListed(list, members)]]
        : [];
    });
    return { ...this.#head(), ...Object.fromEntries(lists) } as ProcedureFile;
  }

  /** Notes a conflict, and returns whose version was decided for; `null` while nobody did. */
  #decide(conflict: Conflict): MergeSide | null {
    const side = this.#decisions.get(conflictName(conflict)) ?? null;
    (side === null ? this.conflicts : this.decided).push(conflict);
    return side;
  }

  #head(): Fields {
    const heads = each(this.#files, (file) =>
      Object.fromEntries(
        Object.entries(file).filter(([key]) => {
          const list = FILE_LISTS.find((one) => one === key);
          return list === undefined || this.#whole.has(list);
        }),
      ),
    );
    return mergedFields(heads, (field, values) => this.#decide({ list: "head", id: null, field, ...values }));
  }

  /**
   * The steps that stood in the base and were dropped by a side: references to them in the base are removed, unless it was decided
   * to keep the step.
   */
  #goneSteps(): ReadonlySet<string> {
    const steps = this.#rolls.get("steps");
    return new Set(
      [...(steps?.base.members.keys() ?? [])].filter(
        (key) =>
          (!steps?.ours.members.has(key) || !steps?.theirs.members.has(key)) && !this.#isKept(key, steps),
      ),
    );
  }

  /** True for a step that a side dropped and that was decided to stay. */
  #isKept(key: string, steps: Three<Roll> | undefined): boolean {
    const side = this.#decisions.get(conflictName({ list: "steps", id: key, field: null })) ?? null;
    return side !== null && steps?.[side].members.has(key) === true;
  }

  #mergeMembers(list: ListName, gone: ReadonlySet<string>): void {
    const rolls = this.#rolls.get(list);
    if (!rolls) return;
    const merged = new Map<string, MergedMember>();
    const keys = [rolls.base, rolls.ours, rolls.theirs].flatMap(({ members }) => [...members.keys()]);
    for (const key of new Set(keys)) {
      const placed = each(rolls, ({ members }) => members.get(key) ?? null);
      const member = this.#mergedMember(list, list === "words" ? fromNone(placed) : placed, gone);
      if (member) merged.set(key, member);
    }
    this.#members.set(list, merged);
  }

  /** A member as merged; `null` when it was dropped, or when the merge cannot decide what it should be. */
  #mergedMember(
    list: ListName,
    { base, ours, theirs }: Three<Placed | null>,
    gone: ReadonlySet<string>,
  ): MergedMember | null {
    const own = (placed: Placed) => ownFields(list, placed.member);
    const id = (ours ?? theirs ?? base)?.id ?? "";
    const asWhole = () => {
      const sides = each({ base, ours, theirs }, (placed) => placed && own(placed));
      return this.#decide({ list, id, field: null, ...sides });
    };
    if (ours && theirs) {
      if (!base) {
        const side = sameJson(own(ours), own(theirs)) ? "ours" : asWhole();
        // The base has none, so that deciding for it leaves the member out.
        if (side === "base") return null;
        const taken = side === "theirs" ? theirs : ours;
        return { own: own(taken), holder: this.#holder(list, id, { base: null, ours, theirs }) };
      }
      const named = this.#letGo(list, { base, ours, theirs }, gone);
      const fields = mergedFields(
        named,
        (field, values) => this.#decide({ list, id, field, ...values }),
        list === "words" ? mergedWords : mergedValue,
      );
      return { own: fields, holder: this.#holder(list, id, { base, ours, theirs }) };
    }
    const left = ours ?? theirs;
    if (!left) return null;
    if (!base) return { own: own(left), holder: left.holder };
    const before = lettingGo(list, own(base), gone);
    if (left.holder === base.holder && sameJson(lettingGo(list, own(left), gone), before)) return null;
    const side = asWhole();
    const taken = side === null ? null : { base, ours, theirs }[side];
    return taken && { own: own(taken), holder: taken.holder };
  }

  /**
   * A member's own fields on the three sides, steps that a side dropped let go where the base named them. A side that came to name a
   * step which the other dropped keeps doing so: the reference is left dangling, and found when the merged file is read.
   */
  #letGo(list: ListName, sides: Three<Placed>, gone: ReadonlySet<string>): Three<Fields> {
    const fields = this.#takingBack(
      list,
      each(sides, ({ member }) => ownFields(list, member)),
    );
    if (lettingGo(list, fields.base, gone) === fields.base) return fields;
    const named = new Set(
      [...gone].filter((id) => lettingGo(list, fields.base, new Set([id])) !== fields.base),
    );
    return each(fields, (one) => lettingGo(list, one, named));
  }

  /**
   * A member's own fields on the three sides, where a step was decided to stay that a side dropped: what that side let go with the
   * step, and with it alone, is as in the base again.
   */
  #takingBack(list: ListName, fields: Three<Fields>): Three<Fields> {
    const steps = this.#rolls.get("steps");
    const back = (side: Fields, roll: Roll | undefined): Fields => {
      const kept = [...(steps?.base.members.keys() ?? [])].filter(
        (key) => roll && !roll.members.has(key) && this.#isKept(key, steps),
      );
      const without = kept.length === 0 ? fields.base : lettingGo(list, fields.base, new Set(kept));
      if (without === fields.base) return side;
      const letGo = Object.keys(fields.base).filter(
        (key) => !sameJson(without[key], fields.base[key]) && sameJson(side[key], without[key]),
      );
      return { ...side, ...Object.fromEntries(letGo.map((key) => [key, fields.base[key]])) };
    };
    return {
      base: fields.base,
      ours: back(fields.ours, steps?.ours),
      theirs: back(fields.theirs, steps?.theirs),
    };
  }

  /** The holder in which a merged member stands. */
  #holder(
    list: ListName,
    id: string,
    sides: { base: Placed | null; ours: Placed; theirs: Placed },
  ): string | null {
    const holders: Three<string | null | typeof ABSENT> = {
      base: sides.base ? sides.base.holder : ABSENT,
      ours: sides.ours.holder,
      theirs: sides.theirs.holder,
    };
    const merged = mergedValue(holders);
    if (merged !== "undecided" && merged.value !== ABSENT) return merged.value;
    const field = list === "steps" ? "task" : "contingency";
    const side = this.#decide({ list, id, field, ...each<unknown, unknown>(holders, shown) });
    const decided = holders[side ?? "ours"];
    return decided === ABSENT ? sides.ours.holder : decided;
  }

  /**
   * Notes a conflict where one side dropped a holder and the other side put a member into it. Where it was decided that the holder
   * goes, what stands in it goes too.
   */
  #checkHolders(): void {
    for (const [list, members] of this.#members) {
      const home = homesOf(list).find((one): one is ListName => one !== "file");
      const homes = home && this.#rolls.get(home);
      if (!home || !homes) continue;
      const missing = new Set([...members.values()].flatMap(({ holder }) => holder ?? []));
      for (const holder of missing) {
        if (this.#members.get(home)?.has(holder)) continue;
        // Do not report the same conflict twice.
        if (this.conflicts.some((one) => one.list === home && one.id === holder)) continue;
        const placed = each(homes, (roll) => roll.members.get(holder) ?? null);
        const sides = each(placed, (one) => one?.member ?? null);
        const isTold = this.decided.some((one) => one.list === home && one.id === holder);
        const side = isTold ? null : this.#decide({ list: home, id: holder, field: null, ...sides });
        const taken = side === null ? null : placed[side];
        if (taken) this.#keep(home, holder, taken);
        else if (isTold || side !== null)
          for (const [key, member] of members) if (member.holder === holder) members.delete(key);
      }
    }
  }

  #keep(list: ListName, key: string, { member, holder }: Placed): void {
    this.#members.get(list)?.set(key, { own: ownFields(list, member), holder });
  }

  /** The members of one holder in their merged order, with what they hold. */
  #ordered(list: ListName, holder: string | null): Fields[] {
    const members = this.#members.get(list);
    const rolls = this.#rolls.get(list);
    if (!members || !rolls) return [];
    const inHolder = [...members].filter(([, member]) => member.holder === holder).map(([key]) => key);
    const sides = each(rolls, ({ orders }) => orders.get(holder) ?? []);
    const { order, ring } = mergedOrder(inHolder, sides);
    let decided: readonly string[] | null = null;
    if (ring) {
      const round = new Set(ring);
      const orders = each(sides, (keys) => keys.filter((key) => round.has(key)));
      const side = this.#decide({ list, id: holder, field: "order", ...orders });
      decided = side && orderAfter(inHolder, sides[side], sides);
    }
    const held = heldBy(list);
    return (order ?? decided ?? inHolder).map((key) => {
      const own = members.get(key)?.own ?? {};
      return held === null ? own : { ...own, [held]: this.#ordered(held, key) };
    });
  }
}

/**
 * Merges what two revisions made of a common base ([CHG5]): what touches different members or different fields, or is the same on both
 * sides, is taken; of anything else both sides are named and nothing is chosen but what somebody decided. The merged file is read
 * again; its findings come with it. Which side is ours makes no difference but for the names and the order of keys. All three files must parse.
 */
export function mergeChanges(
  base: ProcedureFile,
  ours: ProcedureFile,
  theirs: ProcedureFile,
  decisions: MergeDecisions = new Map(),
): Merged {
  const merge = new Merge({ base, ours, theirs }, decisions);
  const file = merge.file();
  const { conflicts, decided } = merge;
  if (conflicts.length > 0) return { file: null, conflicts, decided, findings: [] };
  return { file, conflicts: [], decided, findings: parseProcedure(file).findings };
}
