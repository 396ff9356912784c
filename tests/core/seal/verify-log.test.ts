import { describe, expect, it } from "vitest";
import { platformFits } from "../../../src/app/seal/platform-fits.ts";
import { machineFits } from "../../../src/cli/machine-fits.ts";
import type { Verification, Verifying } from "../../../src/core/seal/index.ts";
import {
  heardCode,
  SealLooks,
  sealFitsBy,
  spelled,
  verifyLog,
  verifyLogBy,
} from "../../../src/core/seal/index.ts";
import { inWords } from "../../../src/words/index.ts";
import {
  entriesOf,
  FORM,
  GROUND,
  HUB,
  HUB_KEY,
  IV,
  keyOf,
  publicKey,
  sealedBy,
  seeds,
  wires,
  withCheckpoint,
  withNext,
} from "./sealed-log.ts";

type Wire = Record<string, unknown>;

function verified(
  log: readonly Wire[],
  trust: readonly string[] = [HUB_KEY],
  verifying: Verifying = {},
): Verification {
  const found = verifyLog(entriesOf(log), trust, verifying);
  if (!found) throw new Error("nothing to verify");
  // The machine's account of signatures is faster, and comes to the same.
  expect(
    verifyLog(entriesOf(log), trust, { isQuick: verifying.isQuick ?? false, fits: sealFitsBy(machineFits) }),
  ).toEqual(found);
  return found;
}

const of = (log: readonly Wire[], trust?: readonly string[]) => {
  const { verdict, sources } = verified(log, trust);
  return { verdict, ...Object.fromEntries(sources.map((one) => [one.source, one.verdict])) };
};

const at = (log: readonly Wire[], source: string, number: number): Wire => {
  const found = log.find((wire) => wire["source"] === source && Number(wire["sequence"]) === number);
  if (!found) throw new Error(`no ${source} ${number}`);
  return found;
};

const changed = (log: readonly Wire[], one: Wire, by: Wire): Wire[] =>
  log.map((wire) => (wire === one ? { ...wire, ...by } : wire));

const without = (log: readonly Wire[], one: Wire): Wire[] => log.filter((wire) => wire !== one);

const unsealed = ({ seal: _, ...wire }: Wire): Wire => wire;

/** A log that is not closed yet, with a checkpoint over all of it. */
const open = () =>
  withCheckpoint(wires().filter(({ type }) => !/walk\.closed|checkpoint/.test(String(type))));

describe("a sound log", () => {
  it("[SEL7] is whole when it is closed and all under a trusted checkpoint, whatever the order of its lines and keys", () => {
    expect(of(wires())).toEqual({ verdict: "whole", [IV]: "whole", [GROUND]: "whole", [HUB]: "whole" });
    const shuffled = wires()
      .reverse()
      .map((wire) => Object.fromEntries(Object.entries(wire).reverse()));
    expect(of(shuffled).verdict).toBe("whole");
    expect(of(wires().map((wire) => ({ ...wire, hubreceived: "2031-04-02T10:00:00.000Z" }))).verdict).toBe(
      "whole",
    );
    const { sources, findings, checkpoints } = verified(wires());
    expect(findings).toEqual([]);
    expect(sources[0]).toMatchObject({
      by: { name: "IV tablet", role: "lead" },
      entries: 6,
      sealed: 6,
      first: 1,
      last: 6,
    });
    expect(checkpoints).toEqual([{ code: FORM.code, by: HUB, trusted: true, entries: 11, state: "fits" }]);
  });

  it("[SEL7] is intact with what is behind the last checkpoint, or while it is open", () => {
    expect(of(open()).verdict).toBe("intact");
    const later = withNext(wires(), GROUND, "note.made", { text: "after closing" });
    expect(verified(later).sources.map(({ verdict, behind }) => [verdict, behind])).toEqual([
      ["whole", 0],
      ["intact", 1],
      ["whole", 0],
    ]);
    expect(verified(later).verdict).toBe("intact");
  });

  it("[SEL1] stays what it was when entries are stamped anew before a checkpoint", () => {
    const base = wires().filter(({ type }) => !/checkpoint/.test(String(type)));
    const late = at(base, GROUND, 2);
    const stamped = changed(base, late, { hlc: "001932886800999-0000", hlcmade: late["hlc"] });
    expect(of(withCheckpoint(stamped)).verdict).toBe("whole");
  });

  it("[SEL4] trusts a hub that a trusted one vouches for, and a device that it admits", () => {
    const far = "/hubs/shore";
    const [hub, device] = [keyOf(7), keyOf(8)];
    let log = withNext(wires(), HUB, "hub.vouched", { source: far, key: publicKey(hub) });
    log = withNext(log, far, "hub.named", { name: "Shore" }, hub);
    const spare = { source: "/devices/spare", key: publicKey(device), role: "marker", name: "Spare" };
    log = withNext(log, far, "device.admitted", spare, hub);
    log = withNext(log, spare.source, "note.made", { text: "key lost, new source" }, device);
    expect(of(log)).toMatchObject({ verdict: "intact", [far]: "intact", "/devices/spare": "intact" });
    expect(of(withCheckpoint(log, far, hub)).verdict).toBe("whole");
  });
});

describe("a log that was changed", () => {
  const attacks: readonly (readonly [what: string, (log: Wire[]) => Wire[], found: string])[] = [
    [
      "a value",
      (log) => changed(log, at(log, GROUND, 2), { data: { step: "a", record: "torque", value: 9 } }),
      "seal-does-not-fit",
    ],
    ["an actor", (log) => changed(log, at(log, IV, 3), { actor: "ev2" }), "seal-does-not-fit"],
    [
      "a time",
      (log) => changed(log, at(log, IV, 2), { time: "2031-04-02T09:00:09.000Z" }),
      "seal-does-not-fit",
    ],
    [
      "two entries swapped",
      (log) => {
        const [a, b] = [at(log, IV, 3), at(log, IV, 4)];
        return changed(changed(log, a, { data: b["data"], type: b["type"] }), b, {
          data: a["data"],
          type: a["type"],
        });
      },
      "seal-does-not-fit",
    ],
    [
      "the numbers closed up after one was dropped",
      (log) =>
        without(log, at(log, IV, 3)).map((wire) =>
          wire["source"] === IV && Number(wire["sequence"]) > 3
            ? {
                ...wire,
                ...Object.fromEntries(
                  ["id", "sequence"].map((name) => [
                    name,
                    String(Number(wire["sequence"]) - 1).padStart(10, "0"),
                  ]),
                ),
              }
            : wire,
        ),
      "seal-does-not-fit",
    ],
    [
      "the order, edited",
      (log) => changed(log, at(log, GROUND, 2), { hlc: "001932886899999-0000" }),
      "seal-does-not-fit",
    ],
    [
      "the order, passed off as stamped anew",
      (log) =>
        changed(log, at(log, GROUND, 2), { hlc: "001932886899999-0000", hlcmade: at(log, GROUND, 2)["hlc"] }),
      "other-order",
    ],
    [
      "an entry of another walk put in",
      (log) => [...log, { ...at(log, GROUND, 2), subject: "walk-other" }],
      "other-walk",
    ],
    [
      "its subject rewritten",
      (log) => changed(log, at(log, GROUND, 2), { data: { text: "from another walk" } }),
      "seal-does-not-fit",
    ],
    [
      "sealed again with another key",
      (log) =>
        log.map((wire) =>
          wire["source"] === GROUND
            ? sealedBy(keyOf(5), { ...wire, ...(wire["sealkey"] ? { sealkey: publicKey(keyOf(5)) } : {}) })
            : wire,
        ),
      "other-key",
    ],
    [
      "a device rewritten with its stolen key",
      (log) => {
        const rest = log.filter((wire) => wire["source"] !== GROUND);
        const first = sealedBy(seeds[GROUND] as Uint8Array, {
          ...at(log, GROUND, 1),
          data: { step: "other" },
        });
        return withNext([...rest, first], GROUND, "note.made", { text: "rewritten" });
      },
      "other-entries",
    ],
    [
      "the seals of a device stripped",
      (log) => log.map((wire) => (wire["source"] === GROUND ? unsealed(wire) : wire)),
      "seals-stripped",
    ],
    [
      "two under one number, one forged",
      (log) => [...log, { ...at(log, GROUND, 2), data: { text: "forged" } }],
      "forged-twin",
    ],
    [
      "an unsealed one in the place of another, which the next does not follow",
      (log) =>
        changed(log, at(log, IV, 5), {
          ...unsealed(at(log, IV, 5)),
          seal: undefined,
          data: { text: "put in" },
        }),
      "does-not-follow",
    ],
    [
      "an entry put in before the first",
      (log) => [
        ...log,
        { ...unsealed(at(log, IV, 2)), id: "0000000000", sequence: "0000000000", prior: undefined },
      ],
      "does-not-follow",
    ],
    [
      "another entry under an id that is taken, with a number of its own",
      (log) => [...log, { ...unsealed(at(log, IV, 2)), sequence: "0000000007", data: { text: "forged" } }],
      "forged-twin",
    ],
  ];

  it("[SEL7] with a seal that does not fit is not said to have none", () => {
    const all = wires();
    const spoiled = changed(all, at(all, IV, 2), { data: { text: "changed" } });
    const own = verified(spoiled).findings.filter(({ source }) => source === IV);
    expect(own).toContainEqual({ kind: "seal-does-not-fit", source: IV, number: 2 });
    expect(own.map(({ kind }) => kind)).not.toContain("unsealed");
  });

  it.each(attacks)("[SEL7] is broken: %s", async (_, attack, kind) => {
    const platform = await platformFits(globalThis.crypto.subtle);
    if (!platform) throw new Error("this platform has no Ed25519");
    for (const trust of [[HUB_KEY], []]) {
      for (const isQuick of [true, false]) {
        const asked = [entriesOf(attack(wires())), trust, { isQuick }] as const;
        expect(await verifyLogBy(new SealLooks(platform), ...asked)).toEqual(verifyLog(...asked));
      }
    }
    const found = verified(attack(wires()));
    expect(found.verdict).toBe("broken");
    expect(found.findings.map((one) => one.kind)).toContain(kind);
    // Without a trusted hub no one is vouched for, and what is broken stays broken.
    expect(verified(attack(wires()), []).verdict).toBe("broken");
    // A quick look finds the same.
    expect(verified(attack(wires()), [HUB_KEY], { isQuick: true })).toEqual({ ...found, isQuick: true });
  });

  it("[SEL7] is cut where numbers are missing, or less is there than a checkpoint held", () => {
    const log = wires();
    expect(of(without(log, at(log, IV, 3)))).toMatchObject({
      verdict: "cut",
      [IV]: "cut",
      [GROUND]: "intact",
    });
    expect(of(without(log, at(log, GROUND, 2)))).toMatchObject({ verdict: "cut", [GROUND]: "cut" });
    expect(of(log.filter((wire) => wire["source"] !== GROUND))).toMatchObject({
      verdict: "cut",
      [GROUND]: "cut",
    });
  });

  it("[TRN2] says of a rehearsal that is not closed that what is missing may be surprises that its hub keeps back", () => {
    const opening = at(wires(), IV, 1);
    const opened = (mode: string) =>
      sealedBy(seeds[IV] as Uint8Array, { ...opening, data: { ...(opening["data"] as object), mode } });
    const played = (mode: string) => {
      const fired = withNext([opened(mode)], GROUND, "surprise.fired", { surprise: "00" });
      return withCheckpoint(withNext(fired, IV, "note.made", { text: "nothing seen" }));
    };
    const seen = (log: readonly Wire[]) => without(log, at(log, GROUND, 1));
    expect(verified(seen(played("rehearsal")))).toMatchObject({ verdict: "cut", mayBeKeptBack: true });
    expect(verified(seen(played("live")))).toMatchObject({ verdict: "cut", mayBeKeptBack: false });
    expect(verified(played("rehearsal")).mayBeKeptBack).toBe(false);
    const closed = withNext(played("rehearsal"), IV, "walk.closed", { end: "complete" });
    expect(verified(seen(closed))).toMatchObject({ verdict: "cut", mayBeKeptBack: false });
  });

  it("[SEL7] is forked where two of one number, or two that follow the same, are sealed with its key", () => {
    const log = wires();
    const twin = sealedBy(seeds[GROUND] as Uint8Array, {
      ...at(log, GROUND, 2),
      data: { text: "the other history" },
    });
    expect(of([...log, twin])).toMatchObject({ verdict: "forked", [GROUND]: "forked" });
    expect(of([twin, ...log])).toMatchObject({ verdict: "forked" });
    const third = { ...at(log, GROUND, 2), id: "0000000003", sequence: "0000000003" };
    expect(of([...log, sealedBy(seeds[GROUND] as Uint8Array, third)])).toMatchObject({ verdict: "forked" });
  });

  it("[SEL7] is partly vouched for where seals are lacking, or nobody trusted vouches", () => {
    const log = open();
    const tail = withNext(log, GROUND, "note.made", { text: "tail" });
    expect(of(tail.map((wire, index) => (index === tail.length - 1 ? unsealed(wire) : wire)))).toMatchObject({
      verdict: "partly",
      [GROUND]: "partly",
      [IV]: "intact",
    });
    expect(of(wires(), []).verdict).toBe("partly");
    expect(of(wires(), [publicKey(keyOf(4))]).verdict).toBe("partly");
    const old = wires()
      .filter(({ source }) => source !== HUB)
      .map(({ seal: _, sealkey: __, prior: ___, ...wire }) => wire);
    expect(of(old)).toEqual({ verdict: "partly", [IV]: "partly", [GROUND]: "partly" });
    const falseHub = withCheckpoint(
      withNext(
        wires().filter(({ source }) => source !== HUB),
        "/hubs/false",
        "hub.named",
        { name: "False" },
        keyOf(6),
      ),
      "/hubs/false",
      keyOf(6),
    );
    expect(of(falseHub).verdict).toBe("partly");
  });

  it("[SEL4] takes a hub's word on another hub, and on a device, for the sources below them", () => {
    const far = "/hubs/far/epoch";
    const log = withNext(wires(), far, "hub.named", { name: "Far" }, keyOf(7));
    expect(of(log)).toMatchObject({ [far]: "partly" });
    const vouched = (source: string, key: string) => withNext(log, HUB, "hub.vouched", { source, key });
    expect(of(withCheckpoint(vouched("/hubs/far", publicKey(keyOf(7)))))).toMatchObject({
      verdict: "whole",
      [far]: "whole",
    });
    expect(of(vouched("/hubs/far", publicKey(keyOf(8))))).toMatchObject({ [far]: "broken" });
    const below = `${IV}/memory-x`;
    const more = withNext(wires(), below, "note.made", { text: "x" }, seeds[IV]);
    expect(of(withCheckpoint(more))).toMatchObject({ verdict: "whole", [below]: "whole" });
  });

  it("[SEL4] does not call stripped what a hub says it took without seals", () => {
    const bare = wires().map((wire) => {
      const { seal: _, sealkey: __, prior: ___, ...rest } = wire;
      return wire["source"] === GROUND ? rest : wire;
    });
    expect(of(bare)).toMatchObject({ verdict: "broken", [GROUND]: "broken" });
    const below = `${IV}/store-x`;
    const taken = withNext(wires(), HUB, "device.admitted", {
      source: below,
      key: null,
      role: "lead",
      name: "iv",
    });
    const sealedBelow = withNext(taken, below, "note.made", { text: "x" }, seeds[IV]).at(-1) as Wire;
    const { seal: _, sealkey: __, ...unsealedBelow } = sealedBelow;
    expect(of([...taken, unsealedBelow])).toMatchObject({ verdict: "partly", [below]: "partly" });
  });

  it("[SEL2] refuses keys of low order, under which one seal fits everything", () => {
    // The neutral element and a point of order 8 (RFC 7748, RFC 8032; the list of their writings is from memory).
    for (const key of [
      "AQAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA",
      "x0FYNLdyeC9-4ZZ9PJx2FIRZL5n_uCMl2hHz6AAAAAA",
    ]) {
      const log = wires().map((wire) =>
        wire["source"] === GROUND && wire["sealkey"] ? { ...wire, sealkey: key } : wire,
      );
      expect(verified(log, []).findings.map(({ kind }) => kind)).toContain("other-key");
    }
  });

  it("[SEL8] is the same entry under another seal, and a seal that fits wins over none", () => {
    const log = wires();
    const spoiled = { ...at(log, GROUND, 2), seal: "A".repeat(86) };
    expect(of([spoiled, ...log]).verdict).toBe("whole");
    expect(of([unsealed(at(log, GROUND, 2)), ...log]).verdict).toBe("whole");
  });

  it("[SEL7] tells an entry that its device's role may not make", () => {
    const log = withNext(wires(), GROUND, "walk.closed", { end: "complete" });
    expect(verified(log).findings).toContainEqual({ kind: "other-role", source: GROUND, number: 3 });
  });
});

describe("a quick look", () => {
  const quick = { isQuick: true };

  it("[SEL7] says that it is one, and comes to the same of a sound log", () => {
    expect(verified(wires(), [HUB_KEY], quick)).toEqual({ ...verified(wires()), isQuick: true });
    expect(verified(open(), [HUB_KEY], quick).verdict).toBe("intact");
    const twice = [...wires(), ...wires()];
    expect(verified(twice, [HUB_KEY], quick).verdict).toBe("whole");
  });

  it("[SEL7] passes by a seal that was spoiled by itself within a run, and not the last one", () => {
    const spoil = (number: number) => changed(wires(), at(wires(), IV, number), {});
    const spoiled = (number: number) =>
      spoil(number).map((wire) =>
        wire["source"] === IV && Number(wire["sequence"]) === number
          ? { ...wire, seal: "A".repeat(86) }
          : wire,
      );
    expect(verified(spoiled(3)).verdict).toBe("broken");
    expect(verified(spoiled(3), [HUB_KEY], quick).verdict).toBe("whole");
    expect(verified(spoiled(6), [HUB_KEY], quick).findings[0]).toEqual({
      kind: "seal-does-not-fit",
      source: IV,
      number: 6,
    });
  });

  it("[SEL7] looks at the last checkpoint of a hub, and at all where that one does not fit", () => {
    const two = withCheckpoint(withNext(wires(), GROUND, "note.made", { text: "later" }));
    expect(verified(two, [HUB_KEY], quick).checkpoints.map(({ state }) => state)).toEqual([
      "not-looked-at",
      "fits",
    ]);
    const cut = without(two, at(two, GROUND, 3));
    expect(verified(cut, [HUB_KEY], quick).checkpoints.map(({ state }) => state)).toEqual(["fits", "cut"]);
  });

  it("[SEL7] tells how far it is", () => {
    const told: [number, number][] = [];
    verified(wires(), [HUB_KEY], { onProgress: (done, of) => told.push([done, of]) });
    expect(told).toEqual(wires().map((_, index) => [index + 1, wires().length]));
  });
});

describe("the voice code", () => {
  it("[SEL6] says which groups differ, however it was typed", () => {
    const { code, entries, checkpoints } = verified(wires());
    const heard = (typed: string) => heardCode({ code, entries, checkpoints }, typed);
    expect(heard(code.toLowerCase().replaceAll("-", " "))).toEqual({ differs: [], entries: 12 });
    expect(heard(FORM.code)).toEqual({ differs: [], entries: 11 });
    expect(heard(`${code.slice(0, -1)}${code.endsWith("Z") ? "Y" : "Z"}`)).toEqual({
      differs: [4],
      entries: null,
    });
    expect(heard("7NU")).toBeNull();
    expect(heard(`${code.slice(0, -1)}1`)).toBeNull();
  });

  it("[SEL6] is spelled letter by letter, each with a word of its own", () => {
    expect(spelled("7NU-X0A").map((group) => group.map(inWords).join(" "))).toEqual([
      "Seven November Uniform",
      "X-ray Zero Alfa",
    ]);
    const letters = "ABC-DEF-GHJ-KMN-PQR-STU-VWX-YZ0-234-567-89";
    const said = spelled(letters).flat().map(inWords);
    expect(new Set(said).size).toBe(32);
    for (const [index, letter] of [...letters.replaceAll("-", "")].slice(0, 23).entries()) {
      expect(said[index]?.[0]).toBe(letter);
    }
  });
});
