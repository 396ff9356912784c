import type { outlookWords as english } from "../../english/screens/outlook.ts";
import type { Translated } from "../../translated.ts";

/** By when a walk is over, as so many samples of ten say, and what samples miss or break. */
export const outlookWords: Translated<typeof english> = {
  "outlook/half": "Hälfte bis {$finish :finish}",
  "outlook/half-margin": "Hälfte bis {$finish :finish}, {$margin :margin} Reserve",
  "outlook/half-over": "Hälfte bis {$finish :finish}, {$margin :length} über dem Zeitlimit",
  "outlook/half-none": "weniger als die Hälfte passt in ihre Zeitfenster",
  "outlook/nine-in-ten": "neun von zehn bis {$finish :finish}",
  "outlook/nine-in-ten-margin": "neun von zehn bis {$finish :finish}, {$margin :margin} Reserve",
  "outlook/nine-in-ten-over": "neun von zehn bis {$finish :finish}, {$margin :length} über dem Zeitlimit",
  "outlook/nine-in-ten-none": "weniger als neun von zehn passen in ihre Zeitfenster",
  "risk/title": "Was Stichproben verfehlen",
  "risk/how":
    "Dauern werden aus PERT-Beta-Verteilungen gezogen; Anteile beziehen sich auf {$samples :integer} Stichproben.",
  "risk/unfit":
    "In {$share :chance of=harm} der Stichproben verfehlt ein Schritt seine Zeitfenster: {$windows :list}, bei {$steps :list}",
  "risk/of": "{$name} {$share :chance of=harm}",
  "risk/done-late": "{$step} ist in {$share :chance of=harm} der Stichproben später als {$by :pet} erledigt",
  "risk/started-late":
    "{$step} beginnt in {$share :chance of=harm} der Stichproben mehr als {$within :margin} nach {$after}",
};
