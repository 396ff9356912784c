import type { Outline } from "../../core/procedure/index.ts";
import type { StepId } from "../../core/units/index.ts";
import type { Wish } from "./wish.ts";

/** What every form for a wish is given. */
export interface WishFormProps {
  /** The plan with everything that is wished so far, as it is shown. */
  readonly outline: Outline;
  /** The same with the texts as they were written, of which changes are made. */
  readonly written: Outline;
  /** True for a step that is not begun, and so may be changed. */
  readonly isOpen: (step: StepId) => boolean;
  readonly onWish: (wish: Wish) => void;
}
