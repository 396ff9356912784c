import { beforeEach, describe, expect, it, vi } from "vitest";
import {
  chooseTheme,
  currentThemeChoice,
  resolveTheme,
  startTheme,
  subscribeToThemeChoice,
} from "../../../src/app/theme/theme-choice.ts";

describe("the theme", () => {
  beforeEach(() => {
    localStorage.clear();
    delete document.documentElement.dataset["theme"];
  });

  it("follows the device until someone chooses", () => {
    expect(currentThemeChoice()).toBe("auto");
    expect(resolveTheme("auto", true)).toBe("night");
    expect(resolveTheme("auto", false)).toBe("day");
    expect(resolveTheme("dim", false)).toBe("dim");
  });

  it("is set on the document at the start and at each choice, and kept", () => {
    startTheme();
    expect(document.documentElement.dataset["theme"]).toBe("day");
    chooseTheme("dim");
    expect(document.documentElement.dataset["theme"]).toBe("dim");
    expect(currentThemeChoice()).toBe("dim");
  });

  it("tells whoever listens, until they stop", () => {
    const listener = vi.fn();
    const stop = subscribeToThemeChoice(listener);
    chooseTheme("night");
    stop();
    chooseTheme("day");
    expect(listener).toHaveBeenCalledTimes(1);
  });

  it("takes a stored word it does not know for no choice", () => {
    localStorage.setItem("tetherline.theme", "plaid");
    expect(currentThemeChoice()).toBe("auto");
  });

  it("still changes for this visit when the store is denied", () => {
    const get = vi.spyOn(Storage.prototype, "getItem").mockImplementation(() => {
      throw new DOMException("denied", "SecurityError");
    });
    const set = vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
      throw new DOMException("denied", "SecurityError");
    });
    chooseTheme("night");
    expect(document.documentElement.dataset["theme"]).toBe("night");
    expect(currentThemeChoice()).toBe("night");
    get.mockRestore();
    set.mockRestore();
  });
});
