import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Course } from "../course/index.ts";
import { marginOf } from "../course/index.ts";
import { minus, NO_TIME } from "../units/index.ts";

/** When a plan finishes by likely durations, and how far that is within its elapsed limit or over it, where there is one. */
export function finishMessage(course: Course): Message {
  const { finish } = course;
  const margin = marginOf(course);
  if (margin === null) return message("plan/finish", { finish });
  return margin < 0
    ? message("plan/finish-over", { finish, over: minus(NO_TIME, margin) })
    : message("plan/finish-within", { finish, margin });
}
