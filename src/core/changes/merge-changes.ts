import type { Fields, Finding, ListName, ProcedureFile } from "../procedure/index.ts";
import { parseProcedure } from "../procedure/index.ts";
import { FILE_LISTS, heldBy, homesOf, LISTS } from "./list-table.ts";
import type { Placed, Roll } from "./members.ts";
import { ownFields, rollOf } from "./members.ts";
import type { Three } from "./merge-fields.ts";
import { ABSENT, each, mergedFields, mergedValue, shown } from "./merge-fields.ts";
import { mergedOrder } from "./merge-order.ts";
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
export type Merged =
  | { readonly file: ProcedureFile; readonly conflicts: readonly []; readonly findings: readonly Finding[] }
  | { readonly file: null; readonly conflicts: readonly Conflict[]; readonly findings: readonly [] };

/** A member of the merged file, before it is put in its place. */
interface MergedMember {
  readonly own: Fields;
  readonly holder: string | null;
}

/** The merge of one procedure: collects what cannot be decided. */
class Merge {
  readonly conflicts: Conflict[] = [];
  readonly #files: Three<Fields>;
  readonly #rolls = new Map<ListName, Three<Roll>>();
  readonly #members = new Map<ListName, Map<string, MergedMember>>();
  /** Lists whose ids do not tell their members apart: they are merged as one value each. */
  readonly #whole = new Set<ListName>();

  constructor(files: Three<Fields>) {
    this.#files = files;
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
      return members.length > 0 || (isListed !== "undecided" && isListed.value) ? [[list, members]] : [];
    });
    return { ...this.#head(), ...Object.fromEntries(lists) } as ProcedureFile;
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
    return mergedFields(heads, (field, values) => {
      this.conflicts.push({ list: "head", id: null, field, ...values });
    });
  }

  /** The steps that stood in the base and were dropped by a side: references to them in the base are removed. */
  #goneSteps(): ReadonlySet<string> {
    const steps = this.#rolls.get("steps");
    return new Set(
      [...(steps?.base.members.keys() ?? [])].filter(
        (key) => !steps?.ours.members.has(key) || !steps?.theirs.members.has(key),
      ),
    );
  }

  #mergeMembers(list: ListName, gone: ReadonlySet<string>): void {
    const rolls = this.#rolls.get(list);
    if (!rolls) return;
    const merged = new Map<string, MergedMember>();
    const keys = [rolls.base, rolls.ours, rolls.theirs].flatMap(({ members }) => [...members.keys()]);
    for (const key of new Set(keys)) {
      const placed = each(rolls, ({ members }) => members.get(key) ?? null);
      const member = this.#mergedMember(list, placed, gone);
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
      this.conflicts.push({ list, id, field: null, ...sides });
    };
    if (ours && theirs) {
      if (!base) {
        if (!sameJson(own(ours), own(theirs))) asWhole();
        return { own: own(ours), holder: this.#holder(list, id, { base: null, ours, theirs }) };
      }
      const named = this.#letGo(list, { base, ours, theirs }, gone);
      const fields = mergedFields(named, (field, values) => {
        this.conflicts.push({ list, id, field, ...values });
      });
      return { own: fields, holder: this.#holder(list, id, { base, ours, theirs }) };
    }
    const left = ours ?? theirs;
    if (!left) return null;
    if (!base) return { own: own(left), holder: left.holder };
    const before = lettingGo(list, own(base), gone);
    const isUntouched = left.holder === base.holder && sameJson(lettingGo(list, own(left), gone), before);
    if (!isUntouched) asWhole();
    return null;
  }

  /**
   * A member's own fields on the three sides, steps that a side dropped let go where the base named them. A side that came to name a
   * step which the other dropped keeps doing so: the reference is left dangling, and found when the merged file is read.
   */
  #letGo(list: ListName, sides: Three<Placed>, gone: ReadonlySet<string>): Three<Fields> {
    const fields = each(sides, ({ member }) => ownFields(list, member));
    if (lettingGo(list, fields.base, gone) === fields.base) return fields;
    const named = new Set(
      [...gone].filter((id) => lettingGo(list, fields.base, new Set([id])) !== fields.base),
    );
    return each(fields, (one) => lettingGo(list, one, named));
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
    this.conflicts.push({ list, id, field, ...each<unknown, unknown>(holders, shown) });
    return sides.ours.holder;
  }

  /** Notes a conflict where one side dropped a holder and the other side put a member into it. */
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
        const sides = each(homes, (roll) => roll.members.get(holder)?.member ?? null);
        this.conflicts.push({ list: home, id: holder, field: null, ...sides });
      }
    }
  }

  /** The members of one holder in their merged order, with what they hold. */
  #ordered(list: ListName, holder: string | null): Fields[] {
    const members = this.#members.get(list);
    const rolls = this.#rolls.get(list);
    if (!members || !rolls) return [];
    const inHolder = [...members].filter(([, member]) => member.holder === holder).map(([key]) => key);
    const sides = each(rolls, ({ orders }) => orders.get(holder) ?? []);
    const { order, ring } = mergedOrder(inHolder, sides);
    if (ring) {
      const round = new Set(ring);
      const orders = each(sides, (keys) => keys.filter((key) => round.has(key)));
      this.conflicts.push({ list, id: holder, field: "order", ...orders });
    }
    const held = heldBy(list);
    return (order ?? inHolder).map((key) => {
      const own = members.get(key)?.own ?? {};
      return held === null ? own : { ...own, [held]: this.#ordered(held, key) };
    });
  }
}

/**
 * Merges what two revisions made of a common base ([CHG5]): what touches different members or different fields, or is the same on both
 * sides, is taken; of anything else both sides are named and nothing is chosen. The merged file is read again; its findings come with it.
 * Which side is ours makes no difference but for the names and the order of keys. All three files must parse.
 */
export function mergeChanges(base: ProcedureFile, ours: ProcedureFile, theirs: ProcedureFile): Merged {
  const merge = new Merge({ base, ours, theirs });
  const file = merge.file();
  if (merge.conflicts.length > 0) return { file: null, conflicts: merge.conflicts, findings: [] };
  return { file, conflicts: [], findings: parseProcedure(file).findings };
}
