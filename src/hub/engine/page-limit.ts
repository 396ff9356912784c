/** After so many characters a page of entries is full, however few there are. */
const ENOUGH = 1_000_000;

/** Takes items of a page while there is room: at most `limit`, the last being the one that makes them a million characters. */
export function pageOf<Item extends { readonly text: string }>(items: Iterable<Item>, limit: number): Item[] {
  const page: Item[] = [];
  if (limit < 1) return page;
  let length = 0;
  for (const item of items) {
    page.push(item);
    length += item.text.length;
    if (page.length >= limit || length >= ENOUGH) break;
  }
  return page;
}
