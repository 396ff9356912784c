import { z } from "zod";
import { procedureSchema } from "./schema.ts";

/** The JSON Schema (2020-12) of the procedure file, as an author's editor reads it; made from the Zod schema. */
export function procedureJsonSchema(): object {
  const schema = z.toJSONSchema(procedureSchema, { io: "input", target: "draft-2020-12" });
  return described(
    schema,
    "Tetherline procedure",
    "A procedure for a walk of two, format tetherline.procedure/1",
  );
}

/** A JSON Schema with what it says of itself. */
const described = (schema: object, title: string, description: string) => ({ ...schema, title, description });
