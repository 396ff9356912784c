import type { planWords as english } from "../../english/screens/plan.ts";
import type { Translated } from "../../translated.ts";

/** A plan along time, what it would be otherwise, and the light it is made with. */
export const planWords: Translated<typeof english> = {
  "plan/revision-kept": "Revision {$revision} ist in der Ablage.",
  "plan/revision-not-kept": "Die neue Revision konnte auf diesem Gerät nicht gespeichert werden.",
  "plan/timeline-as-planned": "Zeitleiste wie geplant",
  "what-if/title": "Was wäre, wenn",
  "what-if/choose":
    "Wählen Sie im Bild einen Schritt, um eine andere Dauer oder eine andere Person zu probieren.",
  "what-if/tasks": "Aufgaben, die erledigt werden",
  "what-if/back": "Zurück zur Datei",
  "what-if/save": "Als Revision {$revision} speichern",
  "what-if/within-limit": "{$share :chance} im Zeitlimit",
  "what-if/over": "{$time :length} darüber",
  "what-if/margin": "{$time :margin} Reserve",
  "what-if/in-file": "In der Datei: Ende {#b}{$finish :finish}{/b}",
  "what-if/in-file-none": "In der Datei: Ende {#b}keines{/b}",
  "what-if/tried": "Probiert: Ende {#b}{$finish :finish}{/b}",
  "what-if/tried-later": "Probiert: Ende {#b}{$finish :finish}{/b} ({$by :length} später)",
  "what-if/tried-earlier": "Probiert: Ende {#b}{$finish :finish}{/b} ({$by :advance} früher)",
  "what-if/tried-same": "Probiert: Ende {#b}{$finish :finish}{/b} (unverändert)",
  "what-if/tried-none": "Probiert: Ende {#b}keines{/b}",
  "what-if/takes": "Dauert {#b}{$time :length}{/b}",
  "what-if/takes-not-as-file": "Dauert {#b}{$time :length}{/b}, in der Datei {$likely :length}",
  "what-if/done-by": "Ausgeführt von",
  "what-if/step-takes": "{$step} dauert {$time :length}",
  "what-if/step-done-by": "{$step}: ausgeführt von {$crew}",
  "what-if/task-left-out": "„{$task}“ wird weggelassen",
  "what-if/task-brought-in": "„{$task}“ wird hereingenommen",
  "what-if/get-ahead": "{$number :integer} {$task} (Zusatzaufgabe)",
  "what-if/decided": "{$decision} hat das Ergebnis {$outcome}",
  "what-if/move-title": "Eine Aufgabe an anderer Stelle",
  "what-if/move-task": "Aufgabe verschieben",
  "what-if/move-behind": "Neuer Platz",
  "what-if/place-first": "ganz am Anfang",
  "what-if/move": "Dorthin verschieben",
  "what-if/swap-title": "Zwei Personen vertauscht",
  "what-if/swap-task": "In der Aufgabe",
  "what-if/swap-one": "Die eine Person",
  "what-if/swap-other": "Die andere Person",
  "what-if/swap": "Vertauschen",
  "what-if/shift-title": "Zeitfenster früher oder später",
  "what-if/shift-window": "{$window}, Minuten später (unter null: früher)",
  "what-if/shift-start":
    "Zeitfenster, die von der Umlaufbahn oder dem Standort kommen, verschieben sich mit dem Beginn, der oben gewählt wird.",
  "what-if/task-behind": "„{$task}“ steht hinter „{$behind}“",
  "what-if/task-first": "„{$task}“ steht am Anfang",
  "what-if/task-swapped": "{$one} und {$other} tauschen die Plätze in „{$task}“",
  "what-if/window-later": "{$window} kommt {$by :length} später",
  "what-if/window-earlier": "{$window} kommt {$by :advance} früher",
  "what-if/pace": "Alles dauert {$pace :integer} % seiner Zeit",
  "what-if/changes": "Probiert: {$changes}.",
  "what-if/no-finding-changes": "Damit kommt kein Befund hinzu, und keiner fällt weg.",
  "what-if/new-findings": "Neue Befunde",
  "what-if/findings-gone": "Befunde, die wegfallen",
  "light/spans-taken":
    ".input {$count :integer} .match $count one {{{$count} Zeitspanne aus {$file :message} übernommen; sich überschneidende wurden zu einer.}} * {{{$count} Zeitspannen aus {$file :message} übernommen; sich überschneidende wurden zu einer.}}",
  "light/row-left-out": "Zeile {$row :integer} wurde ausgelassen: {$why}.",
  "light/file-problem": "{$file :message}: {$why :message}",
  "light/listed-windows": "Aufgelistete Zeitfenster",
  "light/take-times": "Zeiten von {$window} aus einer CSV-Liste übernehmen",
  "light/light-and-start": "Licht und Beginn",
  "light/start": "Beginn (PET 0), UTC",
  "light/refused": "{$file :message} wird nicht angenommen: {$why :message}.",
  "light/day-and-night": "Tag und Nacht",
  "light/not-known":
    "Tag und Nacht sind nicht bekannt: Wählen Sie eine Bahndatei oder einen Standort auf der Oberfläche.",
  "light/decays":
    "Nach diesen Bahnelementen zerfällt die Umlaufbahn innerhalb eines Tages: Die Zeiten sind nicht verwendbar.",
  "light/choose-orbit": "Bahndatei wählen",
  "light/forget": "Vergessen",
  "light/comes-along":
    "Diese Umlaufbahn gehört zur Prozedur. Sie ist erfunden wie die Prozedur; wählen Sie eine andere, oder nehmen Sie sie weg.",
  "light/take-off": "Wegnehmen",
  "light/take-along": "Umlaufbahn der Prozedur verwenden",
  "light/site": "Ein Standort auf der Oberfläche",
  "light/latitude": "Breite, ° Nord",
  "light/longitude": "Länge, ° Ost",
  "light/contact-sites": "Bodenstandorte für Kontakt",
  "light/height": "Höhe, m",
  "light/mask": "Mindesthöhe über dem Horizont, °",
  "light/add-site": "Standort hinzufügen",
  "light/site-off": "Standort wegnehmen",
  "light/use-site": "Sonnenaufgang und -untergang von hier verwenden",
  "light/when-to-go-out": "Wann hinausgehen",
  "light/minute-by-minute": "Beginn, Minute für Minute",
  "light/chance":
    "In {$fits :chance} der Stichproben (Dauern nach PERT-Beta) passt jeder Schritt in seine Zeitfenster.",
  "light/chance-within":
    "In {$fits :chance} der Stichproben (Dauern nach PERT-Beta) passt jeder Schritt in seine Zeitfenster, und in {$within :chance} bleibt der Außeneinsatz im Zeitlimit.",
  "light/window-margin": "{$window}: {$margin :margin} Reserve, bei Schritt {$step}",
  "light/shortest": "Der kürzeste Außeneinsatz dieses Tages: {$start}",
  "light/take-it": "Übernehmen",
  "light/scan-how":
    "Die Linie ist die PET des Endes für jeden Beginn; Grau ist Dunkelheit; die dicke Linie ist das Zeitlimit.",
  "light/curve-how":
    "Die gepunktete Linie ist die Chance, dass jeder Schritt in seine Zeitfenster passt, mit {$samples :integer} Stichproben je {$minutes :integer} Minuten.",
  "light/curve-within-how":
    "Die gepunktete Linie ist die Chance, dass jeder Schritt in seine Zeitfenster passt und der Außeneinsatz im Zeitlimit bleibt, mit {$samples :integer} Stichproben je {$minutes :integer} Minuten.",
  "light/percent": "{$percent :integer} %",
  "light/scan-no-fit": "Bei keinem Beginn an diesem Tag passt jeder Schritt in seine Zeitfenster.",
  "light/scan-none":
    "So, wie die Prozedur ist, lässt sie sich nicht planen; daher lassen sich die Zeiten des Beginns nicht vergleichen.",
  "light/start-no-matter":
    "Kein Schritt liegt in einem Zeitfenster, das von der Tageszeit abhängt; der Plan ist daher derselbe, wann immer der Außeneinsatz beginnt.",
  "light/start-unknown":
    "Schritte liegen in Tag und Nacht, die nicht bekannt sind: Wählen Sie, woher diese kommen, um Zeiten des Beginns zu vergleichen.",
  "light/first-opens": "{$window} öffnet zuerst am {$at :utc form=minute} UTC.",
  "light/go-there": "Zu diesem Tag gehen",
  "light/fits-nothing":
    "Beginn {$at :utc form=minute} UTC: Ein Schritt passt innerhalb eines Tages in kein Zeitfenster.",
  "light/start-waits":
    "Beginn {$at :utc form=minute} UTC: Ende bei PET {$finish :finish}, {$waits :length} Warten auf Zeitfenster.",
  "light/start-waits-margin":
    "Beginn {$at :utc form=minute} UTC: Ende bei PET {$finish :finish}, {$waits :length} Warten auf Zeitfenster, {$margin :margin} Reserve.",
  "light/start-waits-over":
    "Beginn {$at :utc form=minute} UTC: Ende bei PET {$finish :finish}, {$waits :length} Warten auf Zeitfenster, {$margin :length} über dem Zeitlimit.",
  "light/start-straight":
    "Beginn {$at :utc form=minute} UTC: Ende bei PET {$finish :finish}, kein Warten auf Zeitfenster.",
  "light/start-straight-margin":
    "Beginn {$at :utc form=minute} UTC: Ende bei PET {$finish :finish}, kein Warten auf Zeitfenster, {$margin :margin} Reserve.",
  "light/start-straight-over":
    "Beginn {$at :utc form=minute} UTC: Ende bei PET {$finish :finish}, kein Warten auf Zeitfenster, {$margin :length} über dem Zeitlimit.",
  "plan/finish": "Ende {$finish :finish form=second} nach wahrscheinlichen Zeiten",
  "plan/finish-within":
    "Ende {$finish :finish form=second} nach wahrscheinlichen Zeiten, {$margin :margin} innerhalb des Zeitlimits",
  "plan/finish-over":
    "Ende {$finish :finish form=second} nach wahrscheinlichen Zeiten, {$over :length} über dem Zeitlimit",
};
