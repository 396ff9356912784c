import { showUtc, UTC_STYLES, type UtcStyle } from "../../words/index.ts";
import { StoredChoice } from "../session/index.ts";
import { retelling } from "./retelling.ts";

const choice = new StoredChoice<string>("tetherline.utc", "plain");

let inForce: UtcStyle = "plain";

/** How instants of UTC are told now. */
export const utcInForce = (): UtcStyle => inForce;

function goOver(style: UtcStyle): void {
  showUtc(style);
  inForce = style;
}

/** Chooses how instants of UTC are told, at once and for the next visits ([WRD6]). */
export function chooseUtc(style: UtcStyle): void {
  goOver(style);
  choice.choose(style);
  retelling.tell();
}

/** Begins with what was kept on this device: with dates where nothing was. */
export function startUtc(): void {
  goOver(UTC_STYLES.find((one) => one === choice.current()) ?? "plain");
}
