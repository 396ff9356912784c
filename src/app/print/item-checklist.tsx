import type { Item, Location, Outline } from "../../core/procedure/index.ts";
import type { ItemId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { locationWords } from "../parts/index.ts";

interface ItemChecklistProps {
  readonly outline: Outline;
}

/** Every item with its location before and after the walk, bags with their content, and a box to tick for each. */
export function ItemChecklist({ outline }: ItemChecklistProps) {
  return (
    <div className="print-items">
      <ItemList outline={outline} title={words("print/before-walk")} locationOf={({ start }) => start} />
      <ItemList outline={outline} title={words("print/after-walk")} locationOf={({ end }) => end} />
    </div>
  );
}

interface ItemListProps extends ItemChecklistProps {
  readonly title: string;
  readonly locationOf: (item: Item) => Location | undefined;
}

function ItemList({ outline, title, locationOf }: ItemListProps) {
  const { items } = outline.procedure;
  const inside = new Map<ItemId, Item[]>();
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const location = locationOf(item);
    if (location && "item" in location)
      inside.set(location.item, [...(inside.get(location.item) ?? []), item]);
    else {
      const where = location ? locationWords(outline, location) : words("print/anywhere-safe");
      groups.set(where, [...(groups.get(where) ?? []), item]);
    }
  }
  return (
    <section>
      <h3>{title}</h3>
      {[...groups].map(([where, group]) => (
        <div key={where} className="print-item-group">
          <p className="print-item-place">{where}</p>
          <Nested items={group} inside={inside} />
        </div>
      ))}
    </section>
  );
}

function Nested({
  items,
  inside,
}: {
  readonly items: readonly Item[];
  readonly inside: ReadonlyMap<ItemId, readonly Item[]>;
}) {
  return (
    <ul>
      {items.map(({ id, label }) => {
        const content = inside.get(id) ?? [];
        return (
          <li key={id}>
            <span className="print-box" /> {label ?? id}
            {content.length > 0 && <Nested items={content} inside={inside} />}
          </li>
        );
      })}
    </ul>
  );
}
