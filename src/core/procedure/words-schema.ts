import { z } from "zod";
import { text } from "./schema-values.ts";

/** The texts of a list, by their place in it; `null` where one has no text in this language. */
const byPlace = z.array(text.nullable());

/** The texts that a member may have in another language, by the field in which the author's own text stands. */
const texts = {
  do: text.optional(),
  alerts: byPlace
    .optional()
    .describe("Texts of its alerts, by their place in the list; null where one is missing"),
  confirm: text.optional().describe("What is confirmed"),
  check: byPlace
    .optional()
    .describe("What is counted off, by its place in the list; null where one is missing"),
  records: z.record(z.string(), text).optional().describe("Labels of its records, by their ids"),
  brief: text.optional(),
  ask: text.optional(),
  title: text.optional(),
  summary: text.optional(),
  when: text.optional(),
  call: text.optional(),
  label: text.optional(),
  size: text.optional(),
};

const memberWords = z.strictObject({
  ...texts,
  of: z.strictObject(texts).optional().describe("The author's texts as they were when they were translated"),
});

/** The texts of a procedure in other languages: by language, by member, by field ([WRD4]). */
export const wordsSchema = z
  .record(
    z.string(),
    z
      .record(z.string(), memberWords)
      .describe(
        'By the id of a step, task, place … ("places mast" where several lists have the id); "." is the file itself',
      ),
  )
  .describe("The texts in other languages, by BCP 47 tag, by id, by field");

/** What a file has in other languages. */
export type Words = z.output<typeof wordsSchema>;
/** What one member has in one other language. */
export type MemberWords = Words[string][string];
