import type { learnWords as english } from "../../english/screens/learn.ts";
import type { Translated } from "../../translated.ts";

/** What is said of what walks tell of how long steps take. */
export const learnWords: Translated<typeof english> = {
  "learn/no-evidence": "Kein Außeneinsatz sagt etwas darüber: Die Zahlen der Planung bleiben.",
  "learn/one-walk": "Ein Außeneinsatz sagt etwas darüber; das ist zu wenig, um andere Zahlen anzubieten.",
  "learn/hardly-moved":
    "Die wahrscheinliche Zeit würde sich um weniger als ein Zehntel oder eine halbe Minute verschieben: Die Zahlen der Planung bleiben.",
  "learn/disagree":
    "Plan und Belege widersprechen sich: Außeneinsätze schwanken viel stärker als geplant. Sehen Sie sich jeden an, bevor Sie die Zahlen ändern.",
  "learn/offered":
    ".input {$count :integer} .match $count one {{{$count} Außeneinsatz sagt etwas darüber.}} * {{{$count} Außeneinsätze sagen etwas darüber.}}",
  "learn/offered-rehearsed":
    ".input {$count :integer} .match $count one {{{$count} Probe sagt etwas darüber und kein echter Außeneinsatz.}} * {{{$count} Proben sagen etwas darüber und kein echter Außeneinsatz.}}",
  "learn/title": "Aus Außeneinsätzen lernen",
  "learn/what": "Wie lange Schritte dauerten, neben dem Plan",
  "learn/working": "Die Außeneinsätze werden gelesen …",
  "learn/failed":
    "Die Außeneinsätze auf diesem Gerät konnten nicht gelesen werden. Nichts ist verloren: Gehen Sie zurück, und öffnen Sie diese Seite noch einmal.",
  "learn/no-walks":
    "Auf diesem Gerät gibt es noch keinen Außeneinsatz dieser Prozedur. Begleiten oder proben Sie sie, oder lesen Sie in der Ablage ein Protokoll ein.",
  "learn/told-by":
    ".input {$live :integer} .input {$rehearsed :integer} .match $live $rehearsed one one {{{$live} echter Außeneinsatz und {$rehearsed} Probe auf diesem Gerät}} one * {{{$live} echter Außeneinsatz und {$rehearsed} Proben auf diesem Gerät}} * one {{{$live} echte Außeneinsätze und {$rehearsed} Probe auf diesem Gerät}} * * {{{$live} echte Außeneinsätze und {$rehearsed} Proben auf diesem Gerät}}",
  "learn/in-one-go":
    ".input {$count :integer} .match $count one {{{$count} Schritt wurde in einem Zug mit anderen als erledigt angetippt und sagt nichts.}} * {{{$count} Schritte wurden in einem Zug mit anderen als erledigt angetippt und sagen einzeln nichts.}}",
  "learn/renamed": "Umbenannte Schritte",
  "learn/renamed-how":
    "Ein Schritt, der in dieser Revision eine andere id hat, beginnt neu, wenn Sie nicht sagen, welcher er jetzt ist. Angeboten werden die Schritte derselben Personen, mit denselben Gegenständen und zum selben Ort.",
  "learn/renamed-is-now": "„{$action}“ ({$id}) ist jetzt",
  "learn/renamed-none": "keiner von diesen",
  "learn/renamed-step": "{$number} {$action}",
  "learn/renamed-said": "{$before} ist jetzt {$now}.",
  "learn/renamed-take-back": "Zurücknehmen",
  "learn/renamed-take-back-of": "Zurücknehmen, was {$before} jetzt ist",
  "learn/unmatched":
    ".input {$count :integer} .match $count one {{{$count} Zeit gehört zu einem Schritt, den es nicht mehr gibt oder der jetzt andere Arbeit ist: {$steps :list}.}} * {{{$count} Zeiten gehören zu Schritten, die es nicht mehr gibt oder die jetzt andere Arbeit sind: {$steps :list}.}}",
  "learn/which": "Welche Schritte gezeigt werden",
  "learn/shown-evidence": "Schritte mit Außeneinsätzen ({$count :integer})",
  "learn/shown-offered": "Schritte mit einem Angebot ({$count :integer})",
  "learn/shown-all": "Alle Schritte ({$count :integer})",
  "learn/none-shown": "Davon gibt es keine.",
  "learn/steps": "Schritte",
  "learn/planned":
    "Geplant: {$likely :length form=second} wahrscheinlich, {$low :length form=second} bis {$high :length form=second}",
  "learn/expected":
    "Jetzt erwartet: {$middle :length form=second}, acht von zehn Außeneinsätzen {$from :length form=second} bis {$to :length form=second}",
  "learn/weight": "Gewicht der Außeneinsätze {$weight :number maximumFractionDigits=1}",
  "learn/weight-thin": "Dünn: Gewicht der Außeneinsätze {$weight :number maximumFractionDigits=1}",
  "learn/rehearsed-only": "nur aus Proben, die nicht sagen, wie schnell ein echter Außeneinsatz ist",
  "learn/take":
    "{$likely :length form=second} wahrscheinlich planen, {$low :length form=second} bis {$high :length form=second}",
  "learn/walks":
    ".input {$count :integer} .match $count one {{{$count} Außeneinsatz}} * {{{$count} Außeneinsätze}}",
  "learn/walk-took": "{$time :length form=second}, {$mode} vom {$at :utc}",
  "learn/walk-broken-off": "Abgebrochen nach {$time :length form=second}, {$mode} vom {$at :utc}",
  "learn/mode-live": "echter Außeneinsatz",
  "learn/mode-rehearsal": "Probe",
  "learn/weighs": "Gewicht {$weight :number maximumFractionDigits=2}",
  "learn/start-said": "Beginn eingetragen",
  "learn/start-inferred": "Beginn erschlossen",
  "learn/was-reopened": "wieder geöffnet, beide Teile zusammengezählt",
  "learn/was-held": "ein Halt weggelassen",
  "learn/far-off": "weit von den anderen, zählt weniger",
  "learn/legend-planned": "Plan: acht von zehn",
  "learn/legend-found": "Plan und Außeneinsätze: acht von zehn",
  "learn/legend-quantiles": "acht von zehn dieser Außeneinsätze",
  "learn/legend-live": "echter Außeneinsatz",
  "learn/legend-rehearsal": "Probe",
  "learn/legend-broken-off": "abgebrochen",
  "learn/legend-outlier": "weit von den anderen",
  "learn/legend-scale": "geplante wahrscheinliche Zeit; die Linien daneben sind halb und doppelt so lang",
  "learn/no-learning":
    ".input {$walks :integer} .match $walks one {{{$walks} Probe: Kein Lerneffekt ist zu erkennen.}} * {{{$walks} Proben: Kein Lerneffekt ist zu erkennen.}}",
  "learn/learning-shorter":
    "Über {$walks :integer} Proben wurden Schritte kürzer: um {$percent :integer} % bei jeder Verdopplung der Wiederholungen.",
  "learn/learning-longer":
    "Über {$walks :integer} Proben wurden Schritte länger: um {$percent :integer} % bei jeder Verdopplung der Wiederholungen.",
  "learn/how":
    "Nichts ändert sich, bis Sie speichern. Sie nehmen jedes Angebot an oder lassen es; die Außeneinsätze sagen nicht, warum ein Schritt so lange dauerte.",
  "learn/save":
    ".input {$count :integer} .match $count 0 {{Als Revision {$revision} speichern}} one {{{$count} Zeit als Revision {$revision} speichern}} * {{{$count} Zeiten als Revision {$revision} speichern}}",
  "learn/summary": "Zeiten von {$steps :list} nach den Außeneinsätzen {$walks :list}.",
  "learn/summary-behind": "{$summary} Zeiten von {$steps :list} nach den Außeneinsätzen {$walks :list}.",
};
