import { fragmentJsonSchema } from "../core/fragment/index.ts";
import { procedureJsonSchema } from "../core/procedure/index.ts";
import { surprisesJsonSchema } from "../core/training/index.ts";
import type { Terminal } from "./terminal.ts";

/** The options of `schema`: which files it is of, procedures unless said. */
export interface SchemaArguments {
  readonly surprises?: boolean;
  readonly fragment?: boolean;
}

/** `schema`: prints the JSON Schema of a kind of file. */
export function schemaCommand({ surprises, fragment }: SchemaArguments, { out }: Terminal): void {
  const other = fragment ? fragmentJsonSchema() : procedureJsonSchema();
  out(`${JSON.stringify(surprises ? surprisesJsonSchema() : other, null, 2)}\n`);
}
