import { z } from "zod";
import { procedureSchema } from "./schema.ts";

/** The JSON Schema (2020-12) of the procedure file, made from the Zod schema. An author's text editor reads it. */
export function procedureJsonSchema(): object {
  const schema = z.toJSONSchema(procedureSchema, { io: "input", target: "draft-2020-12" });
  return described(
    schema,
    "Tetherline procedure",
    "A procedure for a walk of two, format tetherline.procedure/1 or tetherline.procedure/2",
  );
}

/** Adds a title and a description to a JSON Schema. */
export const described = (schema: object, title: string, description: string) => ({
  ...schema,
  title,
  description,
});
