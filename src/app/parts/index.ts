import "./parts.css";

export { AlertBox } from "./alert-box.tsx";
export { errorWords } from "./error-words.ts";
export { Fact } from "./fact.tsx";
export { MissingPart } from "./missing-part.tsx";
export { MistakeBoundary } from "./mistake-boundary.tsx";
export { Performers } from "./performers.tsx";
export { ScreenHead } from "./screen-head.tsx";
export type { SelectChoice } from "./select-field.tsx";
export { SelectField } from "./select-field.tsx";
export {
  behindTone,
  behindWords,
  callsOf,
  limitWords,
  locationWords,
  quantityWords,
  spanText,
  stateWords,
  stepWords,
} from "./step-words.ts";
export { TABLE_ROLES } from "./table-roles.ts";
export { ThemeField } from "./theme-field.tsx";
export { Worded } from "./worded.tsx";
