import type { Page } from "@playwright/test";

/** What a hub answered to a request that it must not take. */
export interface ForgedAnswer {
  readonly request: string;
  readonly status: number;
  /** Whether the hub took it, in any part. */
  readonly taken: boolean;
}

/**
 * Everything that a page can ask of the hub with its own cookie to get a mark in: entries of its own source, of
 * another's and of none, of three types, in three forms, with and without a made-up token; and what only a lead may ask.
 */
export function forgedRequests(page: Page): Promise<readonly ForgedAnswer[]> {
  return page.evaluate(async () => {
    const walk = window.location.pathname.split("/").at(-1) ?? "";
    const { device } = (await (await fetch(`/api/walks/${walk}/session`)).json()) as { device: string };
    const now = new Date().toISOString();
    const entryOf = (source: string, type: string) => ({
      specversion: "1.0",
      id: "0000000099",
      source,
      type,
      subject: walk,
      time: now,
      recordedtime: now,
      sequence: "0000000099",
      hlc: `${String(Date.now()).padStart(15, "0")}-0000`,
      actor: "watcher",
      datacontenttype: "application/json",
      data: { step: "ev2-stow" },
    });
    const answers: ForgedAnswer[] = [];
    const ask = async (name: string, path: string, request: RequestInit) => {
      const response = await fetch(`/api/walks/${walk}${path}`, request);
      const text = await response.text();
      const isBatch = path === "/entries" && response.ok;
      const taken = isBatch ? /"outcome":"(accepted|known)"/.test(text) : response.ok;
      answers.push({ request: name, status: response.status, taken });
    };
    const post = { method: "POST" };
    for (const source of [device, "/devices/another", ""]) {
      for (const type of ["tetherline.step.done", "tetherline.note.made", "tetherline.unknown.type"]) {
        for (const form of [
          "application/cloudevents-batch+json",
          "application/cloudevents+json",
          "application/json",
        ]) {
          for (const token of [null, "Bearer made.up.token"]) {
            const entry = entryOf(source, type);
            await ask(`${source} ${type} ${form} ${token}`, "/entries", {
              ...post,
              headers: { "content-type": form, ...(token === null ? {} : { authorization: token }) },
              body: JSON.stringify(form === "application/cloudevents+json" ? entry : [entry]),
            });
          }
        }
      }
    }
    const json = { "content-type": "application/json" };
    for (const role of ["lead", "marker"]) {
      await ask(`invitation ${role}`, "/invitations", {
        ...post,
        headers: json,
        body: JSON.stringify({ role }),
      });
    }
    await ask("followers", "/followers", {});
    await ask("refused", "/refused", {});
    await ask("withdraw", `/followers/${encodeURIComponent("/devices/another")}`, { method: "DELETE" });
    return answers;
  });
}
