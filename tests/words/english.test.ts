import { describe, expect, it } from "vitest";
import { englishWords } from "../../src/words/english/index.ts";

const areas = import.meta.glob<Record<string, unknown>>("../../src/words/english/*/*.ts", { eager: true });

describe("the words of English", () => {
  it("[WRD1] stand under one key each, in whatever file they are", () => {
    const files = Object.entries(areas).filter(([path]) => !path.endsWith("/index.ts"));
    expect(files.length).toBeGreaterThan(10);
    const keys = files.flatMap(([, exported]) =>
      Object.values(exported).flatMap((words) => Object.keys(words as object)),
    );
    const doubled = keys.filter((key, index) => keys.indexOf(key) !== index);
    expect(doubled).toEqual([]);
    expect(keys.toSorted()).toEqual(Object.keys(englishWords).toSorted());
  });
});
