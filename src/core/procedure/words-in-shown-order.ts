import { alertsInOrder } from "./alert-order.ts";
import type { Procedure, ProcedureFile } from "./schema.ts";
import { listedKey } from "./shown-texts.ts";
import type { MemberWords, Words } from "./words-schema.ts";

/** The places of the alerts of a step in the order in which they are shown; `null` where they are written in it. */
function shownPlaces(alerts: ProcedureFile["tasks"][number]["steps"][number]["alerts"]): number[] | null {
  const places = alertsInOrder((alerts ?? []).map(({ level }, place) => ({ level, place }))).map(
    ({ place }) => place,
  );
  return places.every((place, index) => place === index) ? null : places;
}

/** The words of alerts in another order; what there is for alerts that are not there stays behind them. */
function turned(words: MemberWords, places: readonly number[]): MemberWords {
  const inOrder = <Texts extends Pick<MemberWords, "alerts">>(texts: Texts): Texts =>
    texts.alerts
      ? {
          ...texts,
          alerts: [
            ...places.map((place) => texts.alerts?.[place] ?? null),
            ...texts.alerts.slice(places.length),
          ],
        }
      : texts;
  const next = inOrder(words);
  return next.of ? { ...next, of: inOrder(next.of) } : next;
}

/**
 * A procedure as read whose words of alerts stand in the order in which its alerts are shown: the file has them by the places
 * at which the alerts are written. The same object where nothing stands elsewhere.
 */
export function wordsInShownOrder(procedure: Procedure, file: ProcedureFile): Procedure {
  const { words } = procedure;
  if (!words) return procedure;
  const tasks = [file.tasks, ...(file.contingencies ?? []).map((one) => one.tasks)].flat();
  const moved = tasks.flatMap(({ steps }) =>
    steps.flatMap(({ id, alerts }) => {
      const places = shownPlaces(alerts);
      return places ? [[id, places] as const] : [];
    }),
  );
  if (moved.length === 0) return procedure;
  const next: Words = Object.fromEntries(
    Object.entries(words).map(([tag, members]) => {
      const turnedHere = moved.flatMap(([id, places]) =>
        [id, listedKey({ list: "steps", id })].flatMap((key) => {
          const member = Object.hasOwn(members, key) ? members[key] : undefined;
          return member ? [[key, turned(member, places)] as const] : [];
        }),
      );
      return [tag, { ...members, ...Object.fromEntries(turnedHere) }];
    }),
  );
  return { ...procedure, words: next };
}
