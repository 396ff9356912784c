export type { Sight } from "./sight.ts";
export { SurpriseCurtain } from "./surprise-curtain.ts";
