import type { findingsOfProcedureWords as english } from "../../english/screens/findings-procedure.ts";
import type { Translated } from "../../translated.ts";

/** What the checker says of a procedure that could be read: order, decisions, supplies, ways, tethers, custody, wording. */
export const findingsOfProcedureWords: Translated<typeof english> = {
  "check/when": "{$finding :message} (Wenn {$conditions :list style=chained}.)",
  "check/when-outcome": "„{$decision}“ das Ergebnis „{$outcome}“ hat",
  "check/when-get-ahead": "von den Zusatzaufgaben nur „{$task}“ erledigt wird",
  "task/needs-get-ahead":
    "Die Zusatzaufgabe „{$task}“ geht nicht ohne die Zusatzaufgabe „{$other}“. Machen Sie daraus eine Aufgabe, oder lassen Sie „{$task}“ selbst mitbringen, was sie braucht.",
  "task/needs-get-aheads":
    "Die Zusatzaufgabe „{$task}“ geht nicht allein, nur mit allen anderen. Machen Sie daraus eine Aufgabe, oder lassen Sie „{$task}“ selbst mitbringen, was sie braucht.",
  "check/when-get-aheads": "Zusatzaufgaben erledigt werden",
  "order/not-all-scenarios":
    "Es gibt mehr Kombinationen von Ergebnissen, als sich einzeln prüfen lassen; jede einzelne und jede paarweise Abweichung von den erwarteten wurde geprüft ({$count :integer}).",
  "order/deadlock": "Verklemmung: Diese Schritte warten ewig aufeinander: {$waits :clauses}.",
  "order/waits-in-lane":
    "„{$step}“ ({$crew :list style=chained}) wartet auf „{$other}“, das in der Spur davor steht",
  "order/waits-on-step":
    "„{$step}“ ({$crew :list style=chained}) wartet auf „{$other}“, ausgeführt von {$otherCrew :list style=chained}",
  "order/more-races":
    "Mehr als {$most :integer} Paare von Schritten kommen sich bei Gegenständen oder Zuständen in die Quere; die übrigen sind nicht aufgeführt.",
  "order/mend-deadlock": "„{$step}“ kommt nicht mehr nach „{$other}“.",
  "place/mend-at": "„{$step}“ wird bei {$place} ausgeführt.",
  "place/mend-translation": "Vor „{$step}“ wechselt {$crew} zu {$place}.",
  "custody/mend-receiver": "{$crew} ist an „{$step}“ beteiligt.",
  "order/race-moves":
    "„{$mover}“ ({$moverCrew :list style=chained}) und „{$other}“ ({$otherCrew :list style=chained}) bewegen beide {$item}, und nichts sagt, was zuerst kommt. Lassen Sie das eine nach dem anderen kommen.",
  "state/race":
    "„{$one}“ setzt {$state} auf {$value}, „{$other}“ auf {$otherValue}, und nichts sagt, was zuerst kommt. Lassen Sie das eine nach dem anderen kommen.",
  "state/needs": "Für „{$step}“ muss {$state} {$value} sein: {$why :message}",
  "state/between":
    "„{$other}“ setzt {$state} auf {$is} und kann vor „{$step}“ kommen. Lassen Sie „{$other}“ nach „{$step}“ kommen, oder lassen Sie einen Schritt dazwischen wieder {$value} setzen.",
  "state/not-set-first":
    "„{$other}“ setzt {$state} auf {$value}, aber nichts sagt, dass es zuerst kommt; bis dahin gilt {$is}. Lassen Sie „{$step}“ nach „{$other}“ kommen, oder setzen Sie den Wert in einem Schritt davor.",
  "state/set-too-late":
    "„{$other}“ setzt {$state} erst nach „{$step}“ auf {$value}; bis dahin gilt {$is}. Stellen Sie „{$step}“ hinter „{$other}“, oder setzen Sie den Wert in einem Schritt davor.",
  "state/never-set":
    "von Anfang an gilt {$is}, und kein Schritt setzt {$state} auf {$value}. Fügen Sie vor „{$step}“ einen Schritt ein, der das tut, oder berichtigen Sie, was „{$step}“ braucht.",
  "state/unset":
    "„{$other}“ setzt {$state} auf {$is}, und nichts danach setzt wieder {$value}. Lassen Sie „{$step}“ vor „{$other}“ kommen, oder fügen Sie dazwischen einen Schritt ein, der den Wert setzt.",
  "state/not-at-its-end":
    "Am Ende ist {$state} {$is} wie am Anfang, nicht {$end}, wie es sein muss. Fügen Sie einen Schritt ein, der den Wert setzt.",
  "state/left-by":
    "Am Ende ist {$state} {$is}, wie „{$step}“ es hinterlässt, nicht {$end}, wie es sein muss. Fügen Sie danach einen Schritt ein, der den Wert setzt.",
  "order/race-takes-out":
    "„{$mover}“ ({$moverCrew :list style=chained}) bewegt {$item}, während „{$other}“ ({$otherCrew :list style=chained}) den Gegenstand an seinem Ort braucht, um an {$handled} zu kommen, und nichts sagt, was zuerst kommt. Lassen Sie das eine nach dem anderen kommen.",
  "order/race-puts-in":
    "„{$mover}“ ({$moverCrew :list style=chained}) bewegt {$item}, während „{$other}“ ({$otherCrew :list style=chained}) {$handled} hineinlegt, und nichts sagt, was zuerst kommt. Lassen Sie das eine nach dem anderen kommen.",
  "decision/one-outcome":
    "Die Entscheidung „{$decision}“ hat nur ein Ergebnis, „{$outcome}“; es gibt also nichts zu entscheiden.",
  "decision/no-branch": "Kein Schritt hängt davon ab, welches Ergebnis die Entscheidung „{$decision}“ hat.",
  "decision/never-performed":
    "„{$step}“ wird nie ausgeführt: Die nötigen Ergebnisse kommen nie zusammen vor.",
  "task/closeout-get-ahead":
    "„{$task}“ muss auf dem Heimweg erledigt werden und kann daher keine Zusatzaufgabe sein, die bei knapper Zeit wegbleibt.",
  "record/no-supply":
    "Bei {$crew :list of=any} gibt es keinen Vorrat „{$supply}“, ein Messwert davon ist also niemandes Ablesung. Nennen Sie einen Vorrat derer, die den Schritt ausführen.",
  "record/other-unit":
    "Der Messwert ist in {$unit} und der Vorrat „{$supply}“ in {$other}. Geben Sie beiden dieselbe Einheit.",
  "supply/redline-above-full":
    "{$crew}, {$supply}: voll bei {$full :number} und am Mindeststand bei {$redline :number}; der Vorrat wäre aufgebraucht, bevor der Außeneinsatz beginnt.",
  "supply/short":
    "{$crew}, {$supply}: Bei geplantem Verbrauch ist der Mindeststand bei PET {$at :clock} erreicht, {$before :length} bevor {$crew} mit „{$step}“ fertig ist.",
  "watch/never-on":
    "Die Kontrolle „{$watch}“ ist vorbei, bevor sie beginnt: „{$until}“ beginnt nicht, nachdem „{$from}“ erledigt ist.",
  "watch/none-due":
    "Die Kontrolle „{$watch}“ wird nie fällig: Sie kehrt alle {$every :length} wieder, gilt aber nur {$on :length}.",
  "time/beyond-turn-back":
    "„{$step}“ hält {$crew} bis PET {$until :clock} bei {$place}. Bei Abbruch zu dieser Zeit dauert die Rückkehr mit allen Abschlussarbeiten {$back :length}; alle müssten also bis PET {$latest :clock} umkehren, um bis zum Zeitlimit {$limit :clock} innen zu sein: {$over :length} darüber.",
  "time/no-return":
    "Bei Abbruch am Ende von „{$step}“, PET {$at :clock}, passen die Abschlussarbeiten in kein Zeitfenster mehr; von da an lässt sich keine Umkehrzeit angeben.",
  "time/return-barred":
    "Bei Abbruch am Ende von „{$step}“, PET {$at :clock}, ist der Heimweg versperrt; von da an lässt sich keine Umkehrzeit angeben. {$why :message}",
  "time/return-breaks": "Bei Abbruch am Ende von „{$step}“, PET {$at :clock}: {$what :message}",
  "return/bar": "{$need :message} {$setter :message}",
  "return/step-needs": "Für „{$step}“ muss {$state} {$value} sein, und es gilt {$is}.",
  "return/way-needs": "Für den Weg von {$crew} zu {$place} muss {$state} {$value} sein, und es gilt {$is}.",
  "return/refuge-needs":
    "Für den Weg von {$crew} zu einem Zufluchtsort muss {$state} {$value} sein, und es gilt {$is}.",
  "return/set-by-none": "Kein Schritt setzt das.",
  "return/set-by-closeout": "„{$step}“ müsste das setzen und kann nicht vorher ausgeführt werden.",
  "return/set-by-left-out":
    "„{$step}“ müsste das setzen, gehört aber nicht zu den Abschlussarbeiten und bleibt daher auf dem Heimweg weg.",
  "return/set-by-done":
    "„{$step}“ müsste das noch einmal setzen: Der Schritt ist erledigt, und kein Schritt der Abschlussarbeiten tut es.",
  "return/done-late":
    "Auf dem Heimweg ist „{$step}“ {$over :length} später erledigt als seine PET {$by :pet}.",
  "return/started-late":
    "Auf dem Heimweg beginnt „{$step}“ mehr als {$within :margin} nach „{$after}“: {$over :length} zu spät.",
  "place/no-refuge":
    "Kein Ort ist ein Zufluchtsort, daher lässt sich keine Umkehrzeit angeben. Kennzeichnen Sie die Orte, an denen man sicher ist.",
  "place/no-way-home":
    "Von {$place} führen keine Routen mit einer Zeit zu einem Zufluchtsort, daher lässt sich für die Schritte dort keine Umkehrzeit angeben.",
  "place/no-start":
    "„{$step}“ hat keine Zeit, und keine der ausführenden Personen hat einen Ort, von dem sie aufbricht.",
  "place/not-there":
    "{$crew} ist bei {$place}, aber „{$step}“ wird bei {$at} ausgeführt, und kein Ortswechsel führt dorthin.",
  "place/no-way-unknown":
    "Es ist nicht bekannt, wo {$crew} vor „{$step}“ ist, daher lässt sich die Zeit des Ortswechsels nicht den Routen entnehmen.",
  "place/no-way":
    "Von {$from} zu {$to} führen keine Routen mit einer Zeit, daher braucht „{$step}“ eine eigene Zeit.",
  "text/confirms-itself":
    "In „{$step}“ bestätigt {$crew}, was {$crew} allein ausführt; lassen Sie es jemand anderen bestätigen.",
  "unit/not-valid":
    "„{$unit}“ ist kein UCUM-Code, daher weiß niemand, was die Zahl bedeutet. Schreiben Sie den Code der Einheit, etwa kPa, N.m oder /min.",
  "unit/not-valid-meant":
    "„{$unit}“ ist kein UCUM-Code, daher weiß niemand, was die Zahl bedeutet. Der nächstliegende Code ist „{$meant}“.",
  "unit/mend": "Aus „{$unit}“ wird „{$meant}“.",
  "size/far-off":
    "In „{$step}“ hat {$record} einen Grenzwert von {$value :number} {$unit}, mehr als hundertfach entfernt von jedem anderen Grenzwert in {$unit}. Sehen Sie nach, ob Zahl und Einheit zusammenpassen.",
  "time/zero":
    "„{$step}“ braucht keine Zeit, und doch wird darin etwas getan. Geben Sie an, wie lange es dauert, oder lassen Sie weg, was getan wird, sodass es ein Meilenstein ist.",
  "time/long":
    "„{$step}“ dauert {$likely :length} und höchstens {$high :length}, mehr als vier Stunden für einen Schritt. Sehen Sie nach, ob die Zeit stimmt, oder machen Sie mehrere Schritte daraus.",
  "time/spread":
    "„{$step}“ dauert mindestens {$low :length} und höchstens {$high :length}, mehr als hundertmal so lange. Sehen Sie nach, ob beide in der richtigen Einheit sind.",
  "time/seconds":
    "„{$step}“ dauert {$likely :length}, während die Hälfte der Schritte mehr als {$usual :length} dauert. Sehen Sie nach, ob Minuten gemeint sind.",
  "text/hand-over-not-confirmed":
    "In „{$step}“ wird {$item} weitergegeben, und niemand bestätigt, dass der Gegenstand gehalten wird. Fügen Sie eine Bestätigung hinzu.",
  "text/mate-not-confirmed":
    "In „{$step}“ wird etwas verbunden, und niemand bestätigt das. Fügen Sie eine Bestätigung hinzu.",
  "text/many-actions":
    "„{$step}“ enthält anscheinend mehr als eine Tätigkeit; mit einer Tätigkeit je Schritt lässt er sich leichter begleiten und markieren.",
  "text/no-verb": "„{$step}“ beginnt nicht mit dem, was zu tun ist; beginnen Sie mit dem Verb.",
  "text/receiver-not-named": "In „{$step}“ geht {$item} an {$crew}, aber der Text nennt {$crew} nicht.",
  "place/way-closed":
    "In „{$step}“ geht {$crew} von {$from} zu {$to}; das ist nur ein Weg, solange {$state} {$value} ist: {$why :message}",
  "tether/reach-not-known":
    "Von {$anchor}, wo die Sicherungsleine von {$crew} befestigt ist, führen keine Routen zu {$place}; daher lässt sich nicht sagen, ob die Sicherungsleine in „{$step}“ reicht.",
  "tether/out-of-reach":
    "In „{$step}“ ist {$crew} bei {$place}, auf dem kürzesten Weg {$way :metres} von {$anchor}, wo die Sicherungsleine von {$crew} befestigt ist. Die Sicherungsleine ist {$length :metres} lang: {$short :metres round=up} zu kurz. Verlegen Sie zuerst den Anschlagpunkt näher heran.",
  "tether/anchor-not-there":
    "In „{$step}“ wird der Anschlagpunkt der Sicherungsleine von {$crew} nach {$anchor} verlegt, aber {$crew} ist bei {$place}.",
  "tether/shared-route":
    "Die Sicherungsleinen von {$one} ({$oneDuring :message}) und {$other} ({$otherDuring :message}) können beide über dem Weg zwischen {$from} und {$to} liegen. Halten Sie beide voneinander frei.",
  "tether/in-step": "in „{$step}“",
  "tether/from-step-to-step": "von „{$first}“ bis „{$last}“",
  "custody/would-be-inside-itself": "{$item} wäre nach „{$step}“ in sich selbst.",
  "custody/not-held":
    "In „{$step}“ ist es für {$crew :list style=chained} nicht möglich, {$item} zu bewegen; der Gegenstand ist anderswo: {$where :message}.",
  "custody/hand-over-apart":
    'In „{$step}“ kann {$item} nicht von {$giver} ({$giverAt :message}) an {$receiver} ({$receiverAt :message}) weitergegeben werden. Lassen Sie zuerst beide an einen Ort kommen, oder geben Sie mit "at" an, wo es ausgeführt wird.',
  "custody/hands-full":
    "Nach „{$step}“, bei PET {$at :clock}, hat {$crew} {$items :list style=chained} in der Hand; dafür sind {$needed :integer} Hände nötig. Lassen Sie zuerst etwas weglegen oder weitergeben.",
  "custody/hands-full-at-start":
    "Bei PET {$at :clock} hat {$crew} {$items :list style=chained} in der Hand; dafür sind {$needed :integer} Hände nötig. Lassen Sie etwas an einem anderen Ort beginnen.",
  "place/inside-works-outside":
    "„{$step}“ wird bei {$place} ausgeführt, also außen, und keine der ausführenden Personen ist dort: {$crew :list style=chained}. Nennen Sie jemanden, der außen ist, oder nehmen Sie den Ort weg.",
  "custody/receiver-absent":
    "In „{$step}“ geht {$item} an {$crew}, ohne dass {$crew} an dem Schritt beteiligt ist.",
  "custody/place-not-there":
    "In „{$step}“ bleibt {$item} bei {$place}, aber niemand von denen, die den Schritt ausführen, ist dort.",
  "custody/bag-not-at-hand":
    "In „{$step}“ kommt {$item} in {$bag}; das ist nicht zur Hand bei {$crew :list style=chained}.",
  "custody/not-at-its-end": "Am Ende ist {$item} nicht am richtigen Ort ({$end :message}): {$is :message}.",
  "custody/left-outside":
    "{$item} bleibt am Ende außen ({$is :message}). Lassen Sie den Gegenstand hereinbringen, oder geben Sie ihm ein Ende.",
  "custody/where-nowhere": "nirgends",
  "custody/where-unknown": "an einem unbekannten Ort",
  "custody/where-crew": "bei {$crew :list style=chained}",
  "custody/where-inside": "innen",
  "custody/where-ground": "am Boden",
  "custody/where-place": "bei {$place}",
  "custody/where-item": "in {$item}",
  "words/no-member": "In den Texten für {$language} ist „{$key}“ die Kennung von nichts, was einen Text hat.",
  "words/no-text":
    "In den Texten für {$language} hat „{$key}“ ein „{$field}“, zu dem der Verfasser keinen Text hat.",
  "words/several":
    "In den Texten für {$language} kann „{$key}“ mehreres meinen, was ein „{$field}“ hat. Schreiben Sie die Liste vor die Kennung, etwa „places {$key}“.",
  "words/too-many":
    "In den Texten für {$language} hat „{$key}“ unter „{$field}“ mehr, als der Verfasser geschrieben hat.",
  "words/older":
    "Der Text für {$language} von „{$field}“ in „{$key}“ ist älter als der Text, den er übersetzt: Dieser war „{$was}“ und ist „{$is}“.",
  "words/missing":
    ".input {$count :integer} .match $count one {{Ein Text hat noch keine Übersetzung für {$language}; dort steht der des Verfassers.}} * {{{$count} Texte haben noch keine Übersetzung für {$language}; dort stehen die des Verfassers.}}",
};
