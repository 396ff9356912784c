import type { WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type { Keep } from "../engine/index.ts";
import { MEMBERS, memberKey } from "./kept-keys.ts";
import { type Member, memberSchema } from "./member.ts";

/** What is told of members. */
export interface MemberListener {
  /** A token is dead: its member was withdrawn, left, or joined again. */
  ended?(member: Member): void;
  /** Who is in a walk has changed. */
  changed?(walk: WalkId): void;
}

/** A member as kept; what cannot be read admits nobody. */
function readMember(text: string | null): Member | null {
  if (text === null) return null;
  try {
    return memberSchema.safeParse(JSON.parse(text)).data ?? null;
  } catch {
    return null;
  }
}

/** Who is in which walk: a copy of what is kept that follows changes by every hub on the same engine. */
export class MemberBook {
  readonly #keep: Keep;
  readonly #members = new Map<string, Member>();
  readonly #walks = new Map<WalkId, Map<string, Member>>();
  readonly #listeners = new Listeners<[before: Member | null, walk: WalkId]>();
  #stopWatching: () => void = () => {};

  private constructor(keep: Keep) {
    this.#keep = keep;
  }

  static async open(keep: Keep): Promise<MemberBook> {
    const book = new MemberBook(keep);
    const told = new Set<string>();
    book.#stopWatching = keep.watch(MEMBERS, (key, value) => {
      told.add(key);
      book.#apply(key, readMember(value));
    });
    for (const [key, value] of await keep.list(MEMBERS)) {
      // What was told meanwhile is newer than the list.
      if (!told.has(key)) book.#apply(key, readMember(value));
    }
    return book;
  }

  /** Everybody in any walk. */
  all(): readonly Member[] {
    return [...this.#members.values()];
  }

  /** Everybody in a walk, in the order of their devices' names. */
  of(walk: WalkId): readonly Member[] {
    return [...(this.#walks.get(walk)?.values() ?? [])].sort((a, b) => (a.device < b.device ? -1 : 1));
  }

  get(walk: WalkId, device: string): Member | null {
    return this.#walks.get(walk)?.get(device) ?? null;
  }

  /** What is kept of a member, past the copy, which may be a moment behind another hub. */
  async ask(walk: WalkId, device: string): Promise<Member | null> {
    const key = memberKey(walk, device);
    const member = readMember(await this.#keep.get(key));
    this.#apply(key, member);
    return member;
  }

  async put(member: Member): Promise<void> {
    const key = memberKey(member.walk, member.device);
    await this.#keep.put(key, JSON.stringify(member));
    this.#apply(key, member);
  }

  async remove({ walk, device }: Member): Promise<void> {
    const key = memberKey(walk, device);
    await this.#keep.remove(key);
    this.#apply(key, null);
  }

  /** Tells a listener of every change; returns a function that ends it. */
  listen(listener: MemberListener): () => void {
    return this.#listeners.add((before, walk) => {
      if (before) listener.ended?.(before);
      listener.changed?.(walk);
    });
  }

  close(): void {
    this.#stopWatching();
  }

  #apply(key: string, member: Member | null): void {
    const before = this.#members.get(key) ?? null;
    if (before?.token === member?.token) return;
    if (before) {
      this.#members.delete(key);
      this.#walks.get(before.walk)?.delete(before.device);
    }
    if (member) {
      this.#members.set(key, member);
      const inWalk = this.#walks.get(member.walk) ?? new Map<string, Member>();
      this.#walks.set(member.walk, inWalk.set(member.device, member));
    }
    const changed = member ?? before;
    if (changed) this.#listeners.tell(before, changed.walk);
  }
}
