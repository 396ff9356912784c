/**
 * A list to which members are only ever added, at its end. Never changed in place: adding gives a longer list that shares its
 * members with the shorter one, so that a list of n members built one by one takes n steps and room for n.
 */
export class GrowingList<Member> implements Iterable<Member> {
  readonly #shared: Member[];
  readonly length: number;

  private constructor(shared: Member[], length: number) {
    this.#shared = shared;
    this.length = length;
  }

  /** The list of these members. */
  static of<Member>(members: readonly Member[] = []): GrowingList<Member> {
    return new GrowingList([...members], members.length);
  }

  /** The list with one more member. */
  and(member: Member): GrowingList<Member> {
    // Only the longest of the lists that share members may write behind its end; any other begins an array of its own.
    const isLongest = this.#shared.length === this.length;
    const shared = isLongest ? this.#shared : this.toArray();
    shared.push(member);
    return new GrowingList(shared, this.length + 1);
  }

  /** The last member; `undefined` for an empty list. */
  last(): Member | undefined {
    return this.#shared[this.length - 1];
  }

  /** The members as an array of the reader's own. */
  toArray(): Member[] {
    return this.#shared.slice(0, this.length);
  }

  *[Symbol.iterator](): IterableIterator<Member> {
    for (let at = 0; at < this.length; at += 1) yield this.#shared[at] as Member;
  }
}
