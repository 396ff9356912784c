import { XMLParser, XMLValidator } from "fast-xml-parser";
import { message } from "../../words/index.ts";
import type { ElementSet, OrbitProblem, ReadOrbit } from "./element-set.ts";
import { rangeProblems, refusedOrbit } from "./element-set.ts";
import { readEpoch } from "./orbit-epoch.ts";

/** The fields of an OMM as texts, by their keywords in CCSDS 502.0-B-3. */
type Fields = ReadonlyMap<string, string>;
type Form = Exclude<ElementSet["form"], "TLE">;

/** All keywords of tables 4-1 to 4-3. User-defined keywords begin with `USER_DEFINED_`. */
const KEYWORDS = new Set(
  (
    "CCSDS_OMM_VERS COMMENT CLASSIFICATION CREATION_DATE ORIGINATOR MESSAGE_ID OBJECT_NAME OBJECT_ID CENTER_NAME REF_FRAME " +
    "REF_FRAME_EPOCH TIME_SYSTEM MEAN_ELEMENT_THEORY EPOCH SEMI_MAJOR_AXIS MEAN_MOTION ECCENTRICITY INCLINATION " +
    "RA_OF_ASC_NODE ARG_OF_PERICENTER MEAN_ANOMALY GM MASS SOLAR_RAD_AREA SOLAR_RAD_COEFF DRAG_AREA DRAG_COEFF " +
    "EPHEMERIS_TYPE CLASSIFICATION_TYPE NORAD_CAT_ID ELEMENT_SET_NO REV_AT_EPOCH BSTAR BTERM MEAN_MOTION_DOT " +
    "MEAN_MOTION_DDOT AGOM COV_REF_FRAME"
  ).split(" "),
);

/**
 * The values that an element set for SGP4 must have in these fields, where the feed gives them at all ([LGT1]; CCSDS
 * 502.0-B-3, 4.2.4.6).
 */
const MUST_BE: readonly (readonly [field: string, allowed: readonly string[]])[] = [
  ["CENTER_NAME", ["EARTH"]],
  ["REF_FRAME", ["TEME"]],
  ["TIME_SYSTEM", ["UTC"]],
  ["MEAN_ELEMENT_THEORY", ["SGP4", "SGP/SGP4", "SGP"]],
];

const NUMBERS = [
  "MEAN_MOTION",
  "ECCENTRICITY",
  "INCLINATION",
  "RA_OF_ASC_NODE",
  "ARG_OF_PERICENTER",
  "MEAN_ANOMALY",
  "NORAD_CAT_ID",
  "BSTAR",
  "MEAN_MOTION_DOT",
  "MEAN_MOTION_DDOT",
] as const;

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/** Feeds leave these out where they are zero or do not matter to SGP4. */
const MAY_BE_ABSENT: ReadonlySet<string> = new Set(["MEAN_MOTION_DOT", "MEAN_MOTION_DDOT", "NORAD_CAT_ID"]);

function elementsOf(fields: Fields, form: Form): ReadOrbit {
  const problems: OrbitProblem[] = [];
  for (const [field, allowed] of MUST_BE) {
    const value = fields.get(field);
    if (value !== undefined && !allowed.includes(value.toUpperCase())) {
      problems.push({ field, reason: message("orbit/needs", { value, needed: String(allowed[0]) }) });
    }
  }
  if (fields.get("OBJECT_ID") === "") problems.push({ field: "OBJECT_ID", reason: message("orbit/empty") });
  const type = fields.get("EPHEMERIS_TYPE");
  if (type !== undefined && !["0", "2", ""].includes(type)) {
    problems.push({ field: "EPHEMERIS_TYPE", reason: message("orbit/not-sgp4", { type }) });
  }
  const numbers = new Map<string, number>();
  for (const field of NUMBERS) {
    const text = fields.get(field)?.trim();
    if (text === undefined || text === "") {
      if (MAY_BE_ABSENT.has(field)) numbers.set(field, 0);
      else problems.push({ field, reason: message("orbit/missing") });
    } else if (NUMBER.test(text)) numbers.set(field, Number(text));
    else problems.push({ field, reason: message("orbit/not-a-number", { text: text.slice(0, 40) }) });
  }
  const epochText = fields.get("EPOCH");
  const epoch = epochText === undefined ? null : readEpoch(epochText.trim());
  if (epochText === undefined) problems.push({ field: "EPOCH", reason: message("orbit/missing") });
  else if (!epoch)
    problems.push({
      field: "EPOCH",
      reason: message("orbit/not-an-epoch", { text: epochText.slice(0, 40) }),
    });
  const value = (field: (typeof NUMBERS)[number]): number => numbers.get(field) ?? 0;
  if (problems.length > 0 || !epoch) return refusedOrbit(problems);
  if (!Number.isInteger(value("NORAD_CAT_ID"))) {
    return refusedOrbit([{ field: "NORAD_CAT_ID", reason: message("orbit/not-whole") }]);
  }
  const elements: ElementSet = {
    name: fields.get("OBJECT_NAME")?.trim() || null,
    object: value("NORAD_CAT_ID"),
    designator: fields.get("OBJECT_ID")?.trim() ?? "",
    ...epoch,
    meanMotion: value("MEAN_MOTION"),
    eccentricity: value("ECCENTRICITY"),
    inclination: value("INCLINATION"),
    ascendingNode: value("RA_OF_ASC_NODE"),
    argumentOfPericenter: value("ARG_OF_PERICENTER"),
    meanAnomaly: value("MEAN_ANOMALY"),
    dragTerm: value("BSTAR"),
    meanMotionDot: value("MEAN_MOTION_DOT"),
    meanMotionDdot: value("MEAN_MOTION_DDOT"),
    form,
  };
  const outOfRange = rangeProblems(elements);
  return outOfRange.length > 0 ? refusedOrbit(outOfRange) : { elements, problems: [] };
}

/** Problems for the keywords that are in no table of the standard. */
function unknownKeywords(keywords: Iterable<string>): OrbitProblem[] {
  return [...keywords].flatMap((field) =>
    KEYWORDS.has(field) || field.startsWith("USER_DEFINED_") || /^C[XYZ](_DOT)?_[XYZ](_DOT)?$/.test(field)
      ? []
      : [{ field: field.slice(0, 60), reason: message("orbit/no-such-keyword") }],
  );
}

/**
 * Reads an OMM in JSON: one object, or a list with one object. Values may be numbers or texts. Other keys, which feeds
 * add, are ignored.
 */
export function readOmmJson(text: string): ReadOrbit {
  let value: unknown;
  try {
    value = JSON.parse(text) as unknown;
  } catch {
    return refusedOrbit([{ field: message("orbit/file"), reason: message("orbit/not-json") }]);
  }
  if (Array.isArray(value)) {
    if (value.length !== 1)
      return refusedOrbit([
        { field: message("orbit/file"), reason: message("orbit/several-sets", { count: value.length }) },
      ]);
    [value] = value as unknown[];
  }
  if (typeof value !== "object" || value === null)
    return refusedOrbit([{ field: message("orbit/file"), reason: message("orbit/not-an-omm") }]);
  const problems: OrbitProblem[] = [];
  const fields = new Map<string, string>();
  for (const [key, one] of Object.entries(value)) {
    if (typeof one === "string" || typeof one === "number") fields.set(key, String(one));
    else if (one !== null && KEYWORDS.has(key))
      problems.push({ field: key, reason: message("orbit/neither") });
  }
  return problems.length > 0 ? refusedOrbit(problems) : elementsOf(fields, "OMM (JSON)");
}

const ASSIGNMENT = /^([A-Z][A-Z0-9_]*)\s*=\s*(.*?)(?:\s+\[[^\]]*\])?\s*$/;

/** Reads an OMM in keyword = value notation (CCSDS 502.0-B-3, chapter 7). Units in brackets are allowed. */
export function readOmmKvn(text: string): ReadOrbit {
  const fields = new Map<string, string>();
  const problems: OrbitProblem[] = [];
  for (const [index, raw] of text.split(/\r?\n/).entries()) {
    const line = raw.trim();
    if (line === "" || line.startsWith("COMMENT")) continue;
    const [, keyword, value] = ASSIGNMENT.exec(line) ?? [];
    if (keyword === undefined || value === undefined)
      problems.push({
        field: message("orbit/line", { line: index + 1 }),
        reason: message("orbit/no-assignment"),
      });
    else if (fields.has(keyword)) problems.push({ field: keyword, reason: message("orbit/stands-twice") });
    else fields.set(keyword, value);
  }
  problems.push(...unknownKeywords(fields.keys()));
  return problems.length > 0 ? refusedOrbit(problems) : elementsOf(fields, "OMM (KVN)");
}

/** The tree of an XML text; `null` when the text is not XML. */
function xmlTree(text: string): { readonly root: unknown } | null {
  if (XMLValidator.validate(text) !== true) return null;
  const parser = new XMLParser({ parseTagValue: false, ignoreAttributes: true, ignoreDeclaration: true });
  try {
    return { root: parser.parse(text) };
  } catch {
    // The parser throws on some texts that its own validator accepts, such as a NUL in a declaration.
    return null;
  }
}

/** Reads an OMM in XML (CCSDS 505.0-B). Every element that contains text counts, whatever element it is in. */
export function readOmmXml(text: string): ReadOrbit {
  const tree = xmlTree(text);
  if (!tree) return refusedOrbit([{ field: message("orbit/file"), reason: message("orbit/not-xml") }]);
  const fields = new Map<string, string>();
  const problems: OrbitProblem[] = [];
  const visit = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    for (const [key, child] of Object.entries(value)) {
      if (typeof child === "string" && key === key.toUpperCase()) {
        if (fields.has(key) && key !== "COMMENT")
          problems.push({ field: key, reason: message("orbit/stands-twice-one-needed") });
        fields.set(key, child);
      } else if (Array.isArray(child)) {
        if (key !== "COMMENT" && key !== "USER_DEFINED")
          problems.push({ field: key, reason: message("orbit/stands-twice-one-needed") });
        for (const one of child) visit(one);
      } else visit(child);
    }
  };
  visit(tree.root);
  return problems.length > 0 ? refusedOrbit(problems) : elementsOf(fields, "OMM (XML)");
}
