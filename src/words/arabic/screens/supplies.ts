import type { supplyWords as english } from "../../english/screens/supplies.ts";
import type { Translated } from "../../translated.ts";

/** What is said of readings of supplies. */
export const supplyWords: Translated<typeof english> = {
  "supply/below-zero": "{$value :number} دون الصفر، ولا يمكن أن يعرض ذلك أي مقياس",
  "supply/above-full": "{$value :number} فوق الممتلئ بأكثر من عُشره، والممتلئ {$full :number}",
};
