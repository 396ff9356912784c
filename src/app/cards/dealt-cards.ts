/** The rows of one step that stand on one card. */
export interface CardPart {
  /** The step, by index, and its rows from the first up to, not including, the last. */
  readonly group: number;
  readonly from: number;
  readonly to: number;
  /** True when the step began on an earlier card, and when it goes on on the next one. Each takes a line that says so. */
  readonly isContinued: boolean;
  readonly goesOn: boolean;
}

/** The room on a card and the height of a line that says that a step goes on, in the unit of the rows. */
export interface CardRoom {
  readonly room: number;
  readonly mark: number;
}

/**
 * Deals the rows of steps out over cards. A step that has room on one card is never divided. One that is longer goes on on
 * the next card, and both cards say so; no row is left out or divided.
 *
 * @param heights the heights of the rows of each step
 * @throws RangeError when a row has no room on an empty card beside the two lines that say that its step goes on
 */
export function dealtCards(
  heights: readonly (readonly number[])[],
  { room, mark }: CardRoom,
): readonly (readonly CardPart[])[] {
  const cards: CardPart[][] = [];
  let card: CardPart[] = [];
  let left = room;
  const turn = () => {
    if (card.length > 0) cards.push(card);
    card = [];
    left = room;
  };
  for (const [group, rows] of heights.entries()) {
    const total = sum(rows, 0, rows.length);
    // A step that is divided begins where at least a third of the card is free.
    if (total > left && (total <= room || left < room / 3)) turn();
    if (total <= left) {
      card.push({ group, from: 0, to: rows.length, isContinued: false, goesOn: false });
      left -= total;
      continue;
    }
    for (let from = 0; from < rows.length; ) {
      const isContinued = from > 0;
      const space = left - (isContinued ? mark : 0);
      const rest = sum(rows, from, rows.length);
      if (rest <= space) {
        card.push({ group, from, to: rows.length, isContinued, goesOn: false });
        left = space - rest;
        break;
      }
      const to = lastThatFits(rows, from, space - mark);
      if (to > from) card.push({ group, from, to, isContinued, goesOn: true });
      else if (card.length === 0) throw new RangeError("a row is higher than a card");
      from = to;
      turn();
    }
  }
  turn();
  return cards;
}

const sum = (rows: readonly number[], from: number, to: number): number =>
  rows.slice(from, to).reduce((total, height) => total + height, 0);

function lastThatFits(rows: readonly number[], from: number, space: number): number {
  let to = from;
  for (let used = rows[to] ?? 0; to < rows.length && used <= space; used += rows[to] ?? 0) to++;
  return to;
}
