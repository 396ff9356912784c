import { readFileSync } from "node:fs";
import { XMLParser } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { reviewOf, reviewXes } from "../../src/core/review/index.ts";
import { LogWriter, minute } from "../core/log-writer.ts";
import { fileWith, step } from "../core/procedure-builder.ts";

/** An attribute of a type of element in the schema. */
interface SchemaAttribute {
  readonly name: string;
  readonly type: string;
  readonly isRequired: boolean;
}

/** The types of elements of the schema, each with its attributes, those of its base included. */
function typesIn(schema: string): Map<string, SchemaAttribute[]> {
  const own = new Map<string, { base: string | null; attributes: SchemaAttribute[] }>();
  for (const [, name = "", body = ""] of schema.matchAll(
    /<xs:complexType name="(\w+)">(.*?)<\/xs:complexType>/g,
  )) {
    const attributes = [...body.matchAll(/<xs:attribute name="([\w.]+)" type="xs:(\w+)"([^>]*)\/>/g)].map(
      ([, attribute = "", type = "", rest = ""]) => ({
        name: attribute,
        type,
        isRequired: rest.includes('use="required"'),
      }),
    );
    own.set(name, { base: /<xs:extension base="(\w+)"/.exec(body)?.[1] ?? null, attributes });
  }
  const all = (name: string): SchemaAttribute[] => {
    const type = own.get(name);
    return type ? [...(type.base === null ? [] : all(type.base)), ...type.attributes] : [];
  };
  return new Map([...own.keys()].map((name) => [name, all(name)]));
}

/** The simple types of XML Schema that the schema uses, for texts of the letters that are used here. */
const SIMPLE: Readonly<Record<string, RegExp>> = {
  NCName: /^[A-Za-z_][\w.-]*$/,
  Name: /^[A-Za-z_:][\w.:-]*$/,
  token: /^(\S+( \S+)*)?$/,
  decimal: /^[+-]?\d+(\.\d*)?$/,
  anyURI: /^\S*$/,
  string: /^[\s\S]*$/,
  dateTime: /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)$/,
};

const ELEMENTS: Readonly<Record<string, string>> = {
  log: "LogType",
  extension: "ExtensionType",
  global: "GlobalsType",
  classifier: "ClassifierType",
  string: "AttributeStringType",
  date: "AttributeDateType",
  trace: "TraceType",
  event: "EventType",
};

/** Which elements an element may hold, in their order; a list stands for those that may be mixed. */
const ATTRIBUTES = ["string", "date"];
const PARTS: Readonly<Record<string, readonly (readonly string[])[]>> = {
  log: [["extension"], ["global"], ["classifier"], ATTRIBUTES, ["trace"], ["event"]],
  global: [ATTRIBUTES],
  trace: [ATTRIBUTES, ["event"]],
  event: [ATTRIBUTES],
};

type Node = Readonly<Record<string, unknown>>;

/** What is wrong with an element and all below it, by the schema. */
function findings(node: Node, types: ReadonlyMap<string, readonly SchemaAttribute[]>): string[] {
  const name = Object.keys(node).find((key) => key !== ":@") ?? "";
  const given = (node[":@"] ?? {}) as Readonly<Record<string, string>>;
  const children = node[name] as readonly Node[];
  const known = types.get(ELEMENTS[name] ?? "");
  if (!known) return [`${name}: no such element`];
  const wrong = known.flatMap(({ name: attribute, type, isRequired }) => {
    const value = given[attribute];
    if (value === undefined) return isRequired ? [`${name}: ${attribute} is missing`] : [];
    return SIMPLE[type]?.test(value) ? [] : [`${name}: ${attribute}="${value}" is no ${type}`];
  });
  const extra = Object.keys(given).filter(
    (attribute) => attribute !== "xmlns" && !known.some((one) => one.name === attribute),
  );
  let part = 0;
  const parts = PARTS[name] ?? [];
  const astray = children.flatMap((child) => {
    const childName = Object.keys(child).find((key) => key !== ":@") ?? "";
    while (part < parts.length && !parts[part]?.includes(childName)) part += 1;
    return part < parts.length ? [] : [`${name}: ${childName} is out of place`];
  });
  return [
    ...wrong,
    ...extra.map((attribute) => `${name}: ${attribute} is not allowed`),
    ...astray,
    ...children.flatMap((child) => findings(child, types)),
  ];
}

const parser = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: "",
  ignoreDeclaration: true,
  trimValues: true,
});
const types = typesIn(readFileSync(new URL("fixtures/xes.xsd", import.meta.url), "utf8"));
const check = (text: string) => (parser.parse(text) as Node[]).flatMap((node) => findings(node, types));

describe("the event log against the schema of its standard", () => {
  const log = LogWriter.started(
    fileWith([step("a", ["ev1", "ev2"], 4), step("b", "ev1", 5), step("c", "iv", 3)]),
  )
    .done(["a", 4], ["b", 9])
    .enter("step.skipped", { step: "c", reason: "no need" }, 10)
    .enter("walk.closed", { end: "complete" }, 11);
  const review = reviewOf(log.folded, minute(60));
  const text = review ? reviewXes(review) : "";

  it("[REV2] is valid", () => {
    expect(types.get("ClassifierType")?.map(({ name, type }) => [name, type])).toEqual([
      ["name", "NCName"],
      ["scope", "NCName"],
      ["keys", "token"],
    ]);
    expect(text).toContain("<trace>");
    expect(check(text)).toEqual([]);
  });

  it.each([
    ['name="Activity"', 'name="The activity"', 'classifier: name="The activity" is no NCName'],
    ['scope="trace"', 'scop="trace"', "global: scop is not allowed"],
    ["<trace>", '<trace><extension name="A" prefix="a" uri="b"/>', "trace: extension is out of place"],
    ['xes.version="1849.2016"', "", "log: xes.version is missing"],
  ])("[REV2] is not, with %s in it as %s", (from, to, finding) => {
    expect(text).toContain(from);
    expect(check(text.replace(from, to))).toContain(finding);
  });
});
