import type { WalkId } from "../../core/units/index.ts";
import { readAhead, type Services } from "../session/index.ts";
import { laterPage } from "./later-pages.ts";

/** Loads the page that follows a walk, and reads the walk, before anybody asks for it. Rejects when either is not to be had. */
export async function openAhead({ store }: Services, walk: WalkId): Promise<void> {
  await Promise.all([laterPage("follow"), readAhead(store.log, walk)]);
}
