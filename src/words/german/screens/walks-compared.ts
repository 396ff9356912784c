import type { walksComparedWords as english } from "../../english/screens/walks-compared.ts";
import type { Translated } from "../../translated.ts";

/** What is said of many walks side by side. */
export const walksComparedWords: Translated<typeof english> = {
  "walks/title": "Außeneinsätze im Vergleich",
  "walks/what": "Alle Außeneinsätze dieser Prozedur auf einer Zeitachse",
  "walks/all":
    ".input {$count :integer} .match $count one {{{$count} Außeneinsatz}} * {{{$count} Außeneinsätze}}",
  "walks/all-how":
    "Eine Linie je Crewmitglied, dick, wo ein Schritt ausgeführt wurde; Lücken sind Warten und Zeit ohne Aufgabe. Eine Raute kennzeichnet einen Schritt, der anders erledigt wurde als geplant. Ein Tippen auf eine Linie öffnet die Auswertung des Außeneinsatzes bei diesem Schritt.",
  "walks/of-live": "Echter Außeneinsatz vom {$at :utc}",
  "walks/of-rehearsal": "Probe vom {$at :utc}",
  "walks/end-complete": "vollständig",
  "walks/end-terminated": "vorzeitig beendet",
  "walks/end-aborted": "abgebrochen",
  "walks/end-open": "offen",
  "walks/finish": "{$ended}, letzter Schritt {$finish :finish}",
  "walks/finish-later": "{$ended}, letzter Schritt {$finish :finish}, {$by :length} später als geplant",
  "walks/finish-earlier": "{$ended}, letzter Schritt {$finish :finish}, {$by :advance} früher als geplant",
  "walks/order":
    ".input {$broken :integer} .input {$all :integer} .match $broken $all 0 one {{Reihenfolge an der einzigen Stelle eingehalten}} 0 * {{Reihenfolge an allen {$all} Stellen eingehalten}} one one {{Reihenfolge an der einzigen Stelle nicht eingehalten}} one * {{Reihenfolge an {$broken} von {$all} Stellen nicht eingehalten}} * one {{Reihenfolge an der einzigen Stelle nicht eingehalten}} * * {{Reihenfolge an {$broken} von {$all} Stellen nicht eingehalten}}",
  "walks/order-none": "keine Reihenfolge zu betrachten",
  "walks/deviations":
    ".input {$count :integer} .match $count 0 {{keine Abweichungen}} one {{{$count} Abweichung}} * {{{$count} Abweichungen}}",
  "walks/waits": "Am längsten gewartet: {$waits :clauses}",
  "walks/waited": "{$who}: {$waited :message}",
  "walks/open": "Auswertung",
  "walks/open-of": "Außeneinsatz vom {$at :utc} auswerten",
  "walks/in-second": "in der zweiten Gruppe",
  "walks/show-rest":
    ".input {$count :integer} .match $count one {{{$count} weiteren Außeneinsatz zeigen}} * {{{$count} weitere Außeneinsätze zeigen}}",
  "walks/steps": "Schritt für Schritt",
  "walks/no-steps": "Kein Schritt dieser Außeneinsätze sagt, wie lange er dauerte.",
  "walks/too-few":
    ".input {$count :integer} .match $count one {{{$count} Außeneinsatz: Unter fünf gibt es nur die Außeneinsätze selbst}} * {{{$count} Außeneinsätze: Unter fünf gibt es nur die Außeneinsätze selbst}}",
  "walks/quantiles":
    "Die Hälfte innerhalb von {$middle :length form=second}, acht von zehn {$from :length form=second} bis {$to :length form=second}, gewöhnlich um den Faktor {$factor :number maximumFractionDigits=2} daneben",
  "walks/groups": "Zwei Gruppen",
  "walks/groups-choose":
    "Kennzeichnen Sie oben die Außeneinsätze einer zweiten Gruppe; die anderen sind die erste.",
  "walks/groups-of":
    "Außeneinsätze in der ersten Gruppe: {$first :integer}, in der zweiten: {$second :integer}.",
  "walks/groups-untested": "Kein Schritt hat in jeder Gruppe zwei Außeneinsätze, daher wird nichts getestet.",
  "walks/groups-none":
    ".input {$count :integer} .match $count one {{Bei dem {$count} getesteten Schritt zeigt sich kein Unterschied.}} * {{Bei keinem der {$count} getesteten Schritte zeigt sich ein Unterschied.}}",
  "walks/groups-shown":
    ".input {$count :integer} .input {$all :integer} .match $count one {{Bei {$count} von {$all} getesteten Schritten zeigt sich ein Unterschied.}} * {{Bei {$count} von {$all} getesteten Schritten zeigt sich ein Unterschied.}}",
  "walks/group-ratio":
    "in der zweiten Gruppe {$ratio :number maximumFractionDigits=2}-mal so lang ({$first :integer} und {$second :integer} Außeneinsätze)",
  "walks/groups-how":
    "Wo kein Unterschied gezeigt wird, kann es trotzdem einen geben; und ein gezeigter sagt weder seine Ursache noch, dass jemand schneller ist.",
  "walks/forecasts": "Stimmten die Prognosen?",
  "walks/forecasts-working": "Die Prognosen werden aus den Protokollen noch einmal berechnet …",
  "walks/forecasts-none":
    "Noch lässt sich keine Prognose beurteilen: Dazu ist ein als vollständig abgeschlossener Außeneinsatz mit mehr als einer Aufgabe nötig.",
  "walks/bands-held":
    "Am Ende von Aufgaben enthielten {$held :integer} von {$count :integer} Bandbreiten von 80 % das eingetretene Ende ({$from :integer} bis {$to :integer} % unter Berücksichtigung des Zufalls), Außeneinsätze: {$walks :integer}.",
  "walks/scores":
    "Im Mittel um {$score :length form=second} daneben; der Plan mit den Zahlen der Planung allein um {$planned :length form=second}. Weniger ist besser.",
  "walks/verdict-too-few": "Für ein Urteil ist das zu wenig: Nötig sind 40 Prognosen und 5 Außeneinsätze.",
  "walks/verdict-hold": "Die Bandbreiten treffen etwa so oft zu, wie sie sagen.",
  "walks/verdict-too-narrow": "Die Bandbreiten sind zu eng: Das Ende liegt öfter außerhalb, als sie sagen.",
  "walks/verdict-too-wide": "Die Bandbreiten sind breiter als nötig.",
  "walks/forecasts-left-out":
    ".input {$count :integer} .match $count one {{{$count} Außeneinsatz ist weggelassen, da er nicht als vollständig abgeschlossen wurde.}} * {{{$count} Außeneinsätze sind weggelassen, da sie nicht als vollständig abgeschlossen wurden.}}",
  "walks/forecasts-shorter":
    ".input {$count :integer} .match $count one {{{$count} Prognose ist weggelassen: Eine Zusatzaufgabe wurde erledigt, mit der sie nicht gerechnet hatte.}} * {{{$count} Prognosen sind weggelassen: Eine Zusatzaufgabe wurde erledigt, mit der sie nicht gerechnet hatten.}}",
  "walks/forecasts-how":
    "Prognosen eines Außeneinsatzes stimmen zusammen oder irren zusammen; viele aus wenigen Außeneinsätzen sagen daher weniger, als es scheint.",
};
