import { closest, distance } from "fastest-levenshtein";
import { z } from "zod";
import { procedureSchema } from "./schema.ts";

type Schema = z.core.$ZodType;

function children(schema: Schema, part: PropertyKey): Schema[] {
  if (schema instanceof z.ZodObject) {
    const child = (schema.shape as Record<PropertyKey, Schema | undefined>)[part];
    return child ? [child] : [];
  }
  if (schema instanceof z.ZodArray) return [schema.element];
  if (schema instanceof z.ZodRecord) return [schema.valueType];
  return unwrap(schema).flatMap((inner) => children(inner, part));
}

function unwrap(schema: Schema): Schema[] {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) return [schema.unwrap()];
  if (schema instanceof z.ZodPipe) return [schema.in];
  if (schema instanceof z.ZodUnion) return [...schema.options];
  return [];
}

function keys(schema: Schema): string[] {
  return schema instanceof z.ZodObject ? Object.keys(schema.shape) : unwrap(schema).flatMap(keys);
}

const schemasAt = (path: readonly PropertyKey[]): Schema[] =>
  path.reduce<Schema[]>((at, part) => at.flatMap((schema) => children(schema, part)), [procedureSchema]);

/** The keys that the procedure format has at a path. An array index in the path stands for any element. */
export function knownKeys(path: readonly PropertyKey[]): string[] {
  return [...new Set(schemasAt(path).flatMap(keys))];
}

/** What the procedure format says of the value at a path. */
export interface KnownForm {
  /** What the schema says of it, in its own words; empty where it says nothing. */
  readonly descriptions: readonly string[];
  /** The values it may have, where they are a short list. */
  readonly values: readonly (string | number | boolean)[];
}

/** What is known of the value at a path of a procedure file; an array index in the path stands for any element. */
export function knownForm(path: readonly PropertyKey[]): KnownForm {
  const schemas = schemasAt(path).flatMap(withInner);
  const said = schemas.flatMap((schema) => z.globalRegistry.get(schema)?.description ?? []);
  return { descriptions: [...new Set(said)], values: [...new Set(schemas.flatMap(valuesOf))] };
}

const withInner = (schema: Schema): Schema[] => [schema, ...unwrap(schema).flatMap(withInner)];

function valuesOf(schema: Schema): readonly (string | number | boolean)[] {
  if (schema instanceof z.ZodEnum) return schema.options;
  if (schema instanceof z.ZodBoolean) return [true, false];
  if (schema instanceof z.ZodLiteral)
    return [...schema.values].filter((value) => typeof value === "string" || typeof value === "number");
  return [];
}

/** The known word nearest to `word` by edit distance; `null` when none is near enough to have been meant. */
export function nearest(word: string, known: readonly string[]): string | null {
  if (known.length === 0) return null;
  const candidate = closest(word.toLowerCase(), known);
  return distance(word.toLowerCase(), candidate.toLowerCase()) <= Math.max(2, Math.ceil(candidate.length / 2))
    ? candidate
    : null;
}

const digitsOf = (word: string) => word.replace(/\D/g, "");

/**
 * The known word that `word` is certainly a misspelling of: at most two letters differ and no more than half of them,
 * no other known word is as near, and the digits are the same, since `bolt-2` is not a misspelling of `bolt-1`. Returns
 * `null` when there is no such word.
 */
export function surelyMeant(word: string, known: readonly string[]): string | null {
  const ranked = known.map((one) => ({ one, off: distance(word, one) })).sort((a, b) => a.off - b.off);
  const [first, second] = ranked;
  if (!first || first.off > Math.min(2, first.one.length / 2) || first.off === second?.off) return null;
  return digitsOf(first.one) === digitsOf(word) ? first.one : null;
}
