import { renderHook, waitFor } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { useShelf } from "../../../src/app/shelf/index.ts";
import { keepProcedures, keepWalks } from "../../../src/app/shelf/last-shelf.ts";
import type { WalkId } from "../../../src/core/units/index.ts";
import type { DeviceStore } from "../../../src/io/store/index.ts";

const nothing = () => {};
const store = {
  log: { walks: async () => [], watchWalks: () => nothing },
  shelf: { procedures: async () => [], watchProcedures: () => nothing },
} as unknown as DeviceStore;

afterEach(() => localStorage.clear());

describe("what the shelf lists before the store is read", () => {
  it("is what was listed last where the app begins with it", () => {
    keepWalks([{ walk: "a" as WalkId, title: "A", phase: "running", mode: "live" }]);
    keepProcedures([{ key: "p", title: "P", revision: "A", isReadable: true }]);
    const { result } = renderHook(() => useShelf(null));
    expect(result.current.walks?.map(({ walk }) => walk)).toEqual(["a"]);
    expect(result.current.procedures?.map(({ key }) => key)).toEqual(["p"]);
  });

  it("is nothing where other pages came before, which may have brought in something that belongs on top", async () => {
    keepWalks([{ walk: "a" as WalkId, title: "A", phase: "running", mode: "live" }]);
    const { result } = renderHook(() => useShelf(store));
    expect([result.current.walks, result.current.procedures]).toEqual([null, null]);
    await waitFor(() => expect(result.current.walks).toEqual([]));
    await waitFor(() => expect(result.current.procedures).toEqual([]));
  });
});
