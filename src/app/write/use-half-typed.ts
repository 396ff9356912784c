import type { FocusEvent, FormEvent } from "react";
import { useEffect, useMemo, useState } from "react";
import type { Manuscript } from "../../core/write/index.ts";
import type { HalfTyped } from "../../io/store/index.ts";
import { useServices } from "../session/index.ts";
import { HalfTypedKeeper } from "./half-typed-keeper.ts";

/** What was being typed when the page ended, and what keeps it from now on. */
export interface HalfTypedHere {
  /** `null` for nothing, or nothing any more. */
  readonly found: HalfTyped | null;
  /** Puts away what was found. */
  readonly letGo: () => void;
  /** For the element that holds all fields. */
  readonly handlers: {
    readonly onInput: (event: FormEvent<HTMLElement>) => void;
    readonly onBlur: (event: FocusEvent<HTMLElement>) => void;
  };
}

/**
 * Keeps what is being typed into a manuscript and was not taken by a gesture yet, whatever field it stands in, so that it is there when the page ends
 * in the middle of it ([WRT1]). What is found again is only shown: a page that is still typing may be the one that has it.
 */
export function useHalfTyped(name: string, manuscript: Manuscript): HalfTypedHere {
  const { store } = useServices();
  const [found, setFound] = useState<HalfTyped | null>(null);
  const keeper = useMemo(
    () =>
      new HalfTypedKeeper((typed) => {
        void store.manuscripts().then((shelf) => shelf.keepHalfTyped(name, typed));
      }),
    [store, name],
  );
  useEffect(() => {
    let isOver = false;
    const read = async () => {
      const typed = await (await store.manuscripts()).halfTyped(name);
      if (!isOver) setFound(typed);
    };
    // A store that cannot be read says so where the manuscript is opened.
    read().catch(() => {});
    return () => {
      isOver = true;
    };
  }, [store, name]);
  // What a gesture made of the manuscript has taken what was typed.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the manuscript is not read, it is what changed.
  useEffect(() => keeper.forget(), [keeper, manuscript]);
  return {
    found,
    letGo: () => {
      setFound(null);
      void store.manuscripts().then((shelf) => shelf.keepHalfTyped(name, null));
    },
    handlers: useMemo(
      () => ({
        onInput: ({ target }) => {
          if (isField(target)) keeper.note({ field: nameOf(target), text: target.value });
        },
        onBlur: ({ target }) => {
          if (isField(target)) keeper.forget();
        },
      }),
      [keeper],
    ),
  };
}

type Field = HTMLInputElement | HTMLTextAreaElement;

const isField = (target: EventTarget): target is Field =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.type === "text");

const nameOf = (field: Field): string =>
  field.getAttribute("aria-label") ?? field.labels?.[0]?.textContent?.trim() ?? "";
