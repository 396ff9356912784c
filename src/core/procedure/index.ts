export type {
  AddChange,
  BringChange,
  Change,
  DropChange,
  FieldChange,
  Fields,
  HeadChange,
  ListName,
  MoveChange,
  RenameChange,
} from "./change.ts";
export { CHANGE_LISTS, changeForms, changeSchema } from "./change.ts";
export type { Cause, FilePosition, Finding, FindingLevel, Mend, PatchOperation } from "./finding.ts";
export { finding, hasErrors } from "./finding.ts";
export { inFormatOfItsKeys } from "./format-keys.ts";
export type { InLanguage, Marking } from "./in-language.ts";
export { inLanguage, languagesOf } from "./in-language.ts";
export type { PathPart } from "./json-pointer.ts";
export { jsonPointer, pointerParts } from "./json-pointer.ts";
export { described, procedureJsonSchema } from "./json-schema.ts";
export type { JsonText } from "./json-text.ts";
export { readJsonText } from "./json-text.ts";
export type { KnownForm } from "./known-keys.ts";
export { knownForm, knownKeys, nearest } from "./known-keys.ts";
export { canonicalTag, directionOf, languageAtHand, mayBeEnglish } from "./language-tag.ts";
export { idDescribedAs, locationSchema } from "./location-schema.ts";
export { contingenciesNamedBy } from "./named-contingencies.ts";
export type { Outline, OutlineDecision, OutlineStep } from "./outline.ts";
export { outlineOf, withoutTasks } from "./outline.ts";
export { pictureTypeOf } from "./picture-findings.ts";
export { pictureSource } from "./picture-source.ts";
export type { ReadProcedure } from "./read-procedure.ts";
export { parseProcedure, procedureFileOf, readProcedure } from "./read-procedure.ts";
export type { Activity, GetAheads, Outcomes, Scenarios } from "./scenario.ts";
export { AS_EXPECTED, activityOf, lanesOf, MOST_SCENARIOS, scenariosOf } from "./scenario.ts";
export type {
  Alert,
  Contingency,
  CrewMember,
  Decision,
  Item,
  Location,
  Place,
  Procedure,
  ProcedureFile,
  Route,
  State,
  StateValues,
  Step,
  StepRecord,
  StepTime,
  Supply,
  Task,
  TimeWindow,
  Watch,
} from "./schema.ts";
export { FORMAT, FORMATS, MOST_PICTURE_BYTES } from "./schema.ts";
export { duration as durationSchema } from "./schema-values.ts";
export type { TextField, TextHolder, TextList, TextPart } from "./shown-texts.ts";
export { listedKey, TEXT_FIELDS, textHolders } from "./shown-texts.ts";
export { SIZE_LIMITS } from "./size-findings.ts";
export { stateLabel, valueLabel } from "./state-labels.ts";
export { taskSchema } from "./step-schema.ts";
export { strandLooks } from "./strand-look.ts";
export type { LanguageText, LanguageTexts, StrayWords, TextStanding } from "./texts-in-language.ts";
export { holdersByKey, textsInLanguage, wordsKey } from "./texts-in-language.ts";
