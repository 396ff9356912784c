/**
 * A list that only grows at its end. A list is never changed in place: adding a member returns a longer list that
 * shares its storage with the shorter one. Building a list of n members one by one therefore takes O(n) time and
 * space.
 */
export class GrowingList<Member> implements Iterable<Member> {
  readonly #shared: Member[];
  readonly length: number;

  private constructor(shared: Member[], length: number) {
    this.#shared = shared;
    this.length = length;
  }

  /** Returns a list of the given members. */
  static of<Member>(members: readonly Member[] = []): GrowingList<Member> {
    return new GrowingList([...members], members.length);
  }

  /** Returns a list with one more member at its end; this list does not change. */
  and(member: Member): GrowingList<Member> {
    // Only the longest list that shares the array may append to it. A shorter list must copy, or it would overwrite a
    // member of the longer one.
    const isLongest = this.#shared.length === this.length;
    const shared = isLongest ? this.#shared : this.toArray();
    shared.push(member);
    return new GrowingList(shared, this.length + 1);
  }

  /** Returns the last member, or `undefined` for an empty list. */
  last(): Member | undefined {
    return this.#shared[this.length - 1];
  }

  /** Returns the members as a copy that the caller may change. */
  toArray(): Member[] {
    return this.#shared.slice(0, this.length);
  }

  *[Symbol.iterator](): IterableIterator<Member> {
    for (let at = 0; at < this.length; at += 1) yield this.#shared[at] as Member;
  }
}
