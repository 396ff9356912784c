import type { helpOfFollowWords as english } from "../../english/screens/help-follow.ts";
import type { Translated } from "../../translated.ts";

/** The help of the follow screen. */
export const helpOfFollowWords: Translated<typeof english> = {
  "guide/follow": "Hilfe: einen Außeneinsatz begleiten",
  "guide/follow-marker":
    "Eine Scheibe mit Beschriftung ist ein Crewmitglied, auf dem Strang bei dem Schritt, den es erreicht hat. Ein kleiner Ring auf einem Strang kennzeichnet den Schritt, auf den ein Crewmitglied wartet.",
  "guide/follow-slack":
    "Ein lose hängender Strang ist ein Crewmitglied, das wartet; er reicht hinunter bis zu dem Schritt, auf den gewartet wird. Die Karte des Crewmitglieds sagt, auf wen und etwa wie lange.",
  "guide/follow-act-now": "▲ verlangt Handeln jetzt und bleibt, bis es vorbei ist.",
  "guide/follow-look-soon": "◆ verlangt bald einen Blick und bleibt, bis es gesehen ist.",
  "guide/follow-know": "● ist zur Kenntnis und bleibt, bis es gesehen ist.",
  "guide/follow-owed":
    "○ kennzeichnet, was bei einem Schritt noch fehlt: ein Wert, eine Bestätigung, ein Grund, eine Zeit, die nicht vorbei war. Es bleibt, bis das Fehlende kommt, und steht unter „Ausstehend“.",
  "guide/follow-times":
    "Das Wort über einer Zeit sagt, was sie ist: erledigt (fett) wurde eingetragen, erwartet (kursiv) ist die Prognose, geplant ist der Plan, bevor die Uhr startet.",
  "guide/follow-tap":
    "Ein Tippen auf „Erledigt“ markiert einen Schritt, und er ist gespeichert, bevor die Anzeige es sagt. „Rückgängig“ geht durch alles zurück, was auf diesem Gerät eingetragen wurde.",
  "guide/follow-step":
    "Ein Tippen auf eine Zeile der Liste zeigt alles Weitere zu ihrem Schritt: Messwerte, Notizen, Überspringen, Wiederöffnen.",
  "guide/follow-branches":
    "Ein Schritt mit einer Entscheidung sagt unter seinen Ergebnissen, wohin jedes von hier aus nach wahrscheinlichen Zeiten führen würde; sein Bereich sagt es jederzeit. Wer entscheidet, wählt.",
  "guide/follow-away":
    "Die Liste folgt dem Außeneinsatz. Weggeschoben bleibt sie, wo sie ist, und „Zurück zu jetzt“ führt zurück.",
  "guide/follow-pet":
    "PET ist die Zeit seit dem Start der Uhr, nach der Uhr dieses Geräts, korrigiert nach der des Hubs, wo es einen gibt.",
  "guide/follow-margin":
    "Reserve ist das Zeitlimit der Prozedur weniger das Ende nach der Prognose: was übrig bleibt, nach wahrscheinlichen Zeiten und von da aus, wo alle sind.",
  "guide/follow-fit":
    "„Spät dran?“ oder ein Tippen auf „Zum Plan“ sagt, was noch passt: welche Zusatzaufgaben bis zum Zeitlimit möglich sind, wie sicher das ist, und um wie viel die unverzichtbare Arbeit zu lang ist, wenn sie nicht passt. Daneben sucht „Beste Aufteilung des Rests“, wer vom Rest was in welcher Reihenfolge tun sollte, damit er früher fertig ist. Beides ändert nichts.",
  "guide/follow-amend":
    "Die Leitung ändert den Plan unter „Mehr“, bei einem Schritt, von „Spät dran?“ aus oder indem sie einen Eventualfall hereinnimmt. Was das ergäbe, wird zuerst gezeigt; was erledigt oder in Arbeit ist, bleibt. Die anderen werden darauf hingewiesen, bis sie „Gesehen“ antippen; der Rückstand wird dann am geänderten Plan gemessen.",
  "guide/follow-turn-back":
    "Umkehr ist die späteste PET, von der aus alle, die außen sind, noch vor dem Zeitlimit oder einem Mindeststand zurückkommen, mit den geplanten Abschlussarbeiten. Was sie bestimmt, steht daneben; „Zahlen“ sagt mehr.",
  "guide/follow-supplies":
    "Wann ein Mindeststand erreicht ist, folgt aus den letzten Ablesungen oder, wo es zu wenige sind, aus dem geplanten Verbrauch. Ablesungen sind so alt, wie angegeben.",
  "guide/follow-windows":
    "Der nächste Wechsel von Licht oder Kontakt kommt von der Umlaufbahn, dem Standort oder der Liste vom Öffnen des Außeneinsatzes. Nichts misst ihn.",
  "guide/follow-unsure":
    "Wo eine Zahl fehlt, sagt die Anzeige das und rät nicht: keine Prognose, Zeiten nicht bekannt. Dann gelten das Papier und die Flugregeln.",
  "guide/follow-wrong":
    "Eine falsche Markierung: machen Sie sie rückgängig, oder öffnen Sie den Schritt mit einem Grund wieder. Ein falscher Wert: erfassen Sie ihn neu. Ein Gegenstand an anderem Ort: tragen Sie unter „Gegenstände“ ein, wo.",
  "guide/follow-refused":
    "Was nicht gespeichert werden konnte, steht in einem Feld, das bleibt. Notieren Sie es auf Papier, exportieren Sie das Protokoll, und tippen Sie noch einmal.",
  "guide/follow-voice-code":
    "Ob zwei Standorte dasselbe haben, zeigt der Sprechcode unter „Verbindung und Begleiter“: Lesen Sie ihn vor, und geben Sie ein, was der andere Standort vorliest.",
  "guide/follow-link-lost":
    "Ohne Verbindung geht der Außeneinsatz hier weiter, und was eingetragen wird, wird gesendet, wenn die Verbindung zurück ist. Wenn zwei denselben Schritt markieren, schadet das nicht: Die erste Markierung zählt.",
  "guide/follow-gone":
    "Wenn die Anzeige ausfällt, machen Sie mit der gedruckten Prozedur weiter und öffnen den Außeneinsatz wieder aus der Ablage: Jede bestätigte Markierung ist da. Was inzwischen erledigt wurde, wird mit seinen Zeiten eingetragen: „Mehr“, „Von Papier eintragen“.",
  "guide/follow-practice":
    "Neben einer Probe des Übungseinsatzes sagt eine Anleitung, was als Nächstes zu tun ist. Sie lässt sich ausblenden und wieder zeigen und trägt selbst nichts ein. Die Uhr dieses Einsatzes läuft, solange sein Bildschirm angesehen wird.",
};
