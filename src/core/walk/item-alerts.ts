import { message } from "../../words/index.ts";
import { crewHolding, holderOf } from "../custody/index.ts";
import { between } from "../units/index.ts";
import type { RaisedAlert } from "./alert.ts";
import { alertKey } from "./alert.ts";
import type { ItemMove, Ledger } from "./ledger.ts";
import { isComplete } from "./ledger.ts";

/**
 * Returns an alert for each item that was entered as being with somebody, while the next step that moves it is another's.
 * It leads to that step. Each further correction of the item is an alert of its own.
 */
export function itemAlerts(ledger: Ledger): readonly RaisedAlert[] {
  const { outline } = ledger.inForce;
  const corrections = new Map<ItemMove["item"], ItemMove[]>();
  for (const move of ledger.moves) {
    if (move.step === null) corrections.set(move.item, [...(corrections.get(move.item) ?? []), move]);
  }
  return [...corrections].flatMap(([item, moves]): RaisedAlert[] => {
    const last = moves.at(-1);
    const held = holderOf(ledger.custody, item);
    const holders = held ? crewHolding(held) : [];
    const next = outline.steps.find(
      ({ index, step }) =>
        ledger.network.activity.active[index] &&
        !isComplete(ledger, step.id) &&
        step.moves.some((move) => move.item === item),
    );
    if (!last || !next || holders.length === 0) return [];
    if (next.step.by.some((crew) => holders.includes(crew))) return [];
    const callOf = (id: string) => outline.crew.find((member) => member.id === id)?.call ?? id;
    return [
      {
        alert: alertKey("item", item, moves.length),
        level: "look-soon",
        about: next.step.id,
        crew: next.step.by,
        step: next.step.id,
        since: between(ledger.petZero ?? ledger.opened.at, last.at),
        text: message("alert/item-elsewhere", {
          item: outline.item(item)?.label ?? item,
          holders: holders.map(callOf),
          crew: next.step.by.map(callOf),
          step: `${next.number} ${next.step.do}`,
        }),
      },
    ];
  });
}
