import { useEffect, useMemo, useRef } from "react";
import type { Course } from "../../core/course/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type { CardDetail, WorksiteGround, WorksiteMoment, WorksiteScene } from "../../core/worksite/index.ts";
import { looksTheSame, momentOf, worksiteScene } from "../../core/worksite/index.ts";
import { inWords } from "../../words/index.ts";
import { onceAFrame } from "./once-a-frame.ts";
import type { ShownPet } from "./shown-pet.ts";

/** What is shown of a course, where, and how much of it the cards say. */
interface SceneWish {
  readonly ground: WorksiteGround;
  readonly course: Course;
  readonly shown: ShownPet;
  readonly detail: CardDetail;
  /** True for whole metres on the cards ([MAP7]). */
  readonly isWhole: boolean;
}

/**
 * The scene of the PET that is shown, worked out once for all who draw it, and the same object while nothing on it is another.
 * The cards keep the slots that they had in the scene before ([MAP7]). It tells of another PET at most once for each picture of the screen.
 */
export class ShownScene {
  readonly #wish: SceneWish;
  readonly #listeners = new Listeners();
  #before: WorksiteScene | null;
  #made: { readonly pet: Duration; readonly moment: WorksiteMoment; readonly scene: WorksiteScene } | null =
    null;

  /** `before` is the scene that was shown before there was this one; `null` for none. */
  constructor(wish: SceneWish, before: WorksiteScene | null) {
    this.#wish = wish;
    this.#before = before;
  }

  readonly scene = (): WorksiteScene => {
    const { ground, course, shown, detail, isWhole } = this.#wish;
    const pet = shown.pet();
    if (this.#made?.pet === pet) return this.#made.scene;
    const moment = momentOf(course, pet);
    const scene =
      this.#made && looksTheSame(this.#made.moment, moment)
        ? this.#made.scene
        : worksiteScene(ground, moment, { say: inWords, detail, isWhole }, this.#made?.scene ?? this.#before);
    this.#made = { pet, moment, scene };
    return scene;
  };

  readonly subscribe = (onChange: () => void): (() => void) => {
    const stop = this.#listeners.add(onChange);
    if (this.#listeners.size === 1) this.#listen();
    return () => {
      stop();
      if (this.#listeners.size === 0) this.#deafen();
    };
  };

  #deafen = () => {};

  #listen(): void {
    const telling = onceAFrame(() => this.#listeners.tell());
    const stop = this.#wish.shown.subscribe(telling.ask);
    this.#deafen = () => {
      stop();
      telling.stop();
    };
  }
}

/** The scene of the PET that is shown. On another ground, course, detail or grain it begins with the cards in the slots that they had. */
export function useShownScene({ ground, course, shown, detail, isWhole }: SceneWish): ShownScene {
  const last = useRef<ShownScene | null>(null);
  const scene = useMemo(
    () => new ShownScene({ ground, course, shown, detail, isWhole }, last.current?.scene() ?? null),
    [ground, course, shown, detail, isWhole],
  );
  useEffect(() => {
    last.current = scene;
  }, [scene]);
  return scene;
}
