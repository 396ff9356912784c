import type { findingsOfPlanWords as english } from "../../english/screens/findings-plan.ts";
import type { Translated } from "../../translated.ts";

/** What there is to say of a plan in its windows, its light and its limit. */
export const findingsOfPlanWords: Translated<typeof english> = {
  "time/over-limit": "Der Plan liegt {$over :integer} min über dem Zeitlimit.",
  "light/decayed": "Nach ihren Bahnelementen zerfällt die Umlaufbahn innerhalb eines Tages nach dem Beginn.",
  "window/not-known-start":
    "Wann {$window} kommt, ist ohne den Zeitpunkt von PET 0 nicht bekannt; der Plan berücksichtigt es nicht.",
  "window/not-known-orbit":
    "Wann {$window} kommt, ist ohne Umlaufbahn und Zeitpunkt des Beginns nicht bekannt; der Plan berücksichtigt es nicht.",
  "window/no-fit":
    "„{$step}“ dauert {$length :number} min und kann frühestens bei PET {$ready :clock} beginnen. {$why :message} {$mend :message}",
  "window/not-open-after":
    ".input {$count :integer} .match $count one {{{$windows :list style=chained} ist danach nicht offen.}} * {{{$windows :list style=chained} sind danach nicht zugleich offen.}}",
  "window/too-short":
    ".input {$count :integer} .match $count one {{Danach ist {$windows :list style=chained} höchstens {$longest :number} min offen, {$short :number} min zu kurz.}} * {{Danach sind {$windows :list style=chained} höchstens {$longest :number} min zugleich offen, {$short :number} min zu kurz.}}",
  "window/call-out-of-contact":
    '„{$step}“ spricht von PET {$start :clock} bis {$finish :clock} mit dem Boden, außerhalb von {$windows :list style=chained}. Nennen Sie in "within" ein Zeitfenster mit Kontakt, damit der Ruf darauf wartet, oder verschieben Sie den Ruf.',
  "window/fits-earlier":
    "Es würde passen, wenn der Beginn {$earlier :number} min früher möglich wäre, bis PET {$at :clock}.",
  "window/fits-shorter": "Es würde passen, wenn es {$less :number} min weniger dauerte.",
  "window/fits-earlier-or-shorter":
    "Es würde passen, wenn der Beginn {$earlier :number} min früher möglich wäre, bis PET {$at :clock}, oder wenn es {$less :number} min weniger dauerte.",
  "window/fits-never": "Keine Zeitspanne von {$windows :list style=chained} ist jemals lang genug.",
  "time/done-late":
    "„{$step}“ muss bis PET {$by :clock} erledigt sein, und im Plan ist es das um {$at :finish form=second}: {$over :length} zu spät.",
  "time/done-late-bound":
    "„{$step}“ muss bis PET {$by :clock} erledigt sein, und im Plan ist es das um {$at :finish form=second}: {$over :length} zu spät. Zuletzt wird der Beginn möglich durch {$crew :list} mit „{$other}“.",
  "time/started-late":
    "„{$step}“ muss innerhalb von {$within :length} nach „{$after}“ beginnen, und im Plan beginnt es {$over :length} zu spät.",
  "time/started-late-bound":
    "„{$step}“ muss innerhalb von {$within :length} nach „{$after}“ beginnen, und im Plan beginnt es {$over :length} zu spät. Zuletzt wird der Beginn möglich durch {$crew :list} mit „{$other}“.",
  "place/too-far-apart":
    "{$one} und {$other} sind am Ende von „{$step}“, PET {$at :clock}, auf den Wegen {$metres :metres} auseinander: {$over :metres round=up} mehr als die zulässigen {$apart :metres}.",
};
