/** What converts, in a part of its own, which is loaded where a reader has chosen other units than those as written. */
export { inSystem } from "../../core/quantity/index.ts";
