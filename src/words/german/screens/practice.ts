import type { practiceWords as english } from "../../english/screens/practice.ts";
import type { Translated } from "../../translated.ts";

/** The guide beside a practice walk, and what offers it. */
export const practiceWords: Translated<typeof english> = {
  "practice/guide": "Übungsanleitung",
  "practice/clock": "Probe · ihre Uhr läuft, solange Sie hinsehen",
  "practice/put-away": "Anleitung ausblenden",
  "practice/bring-back": "Anleitung zeigen",
  "practice/finish": "Übung beenden",
  "practice/tried": "Ausprobiert: {$count :integer} von {$all :integer}",
  "practice/tried-tap": "Tippen",
  "practice/tried-joint": "gemeinsamer Schritt",
  "practice/tried-value": "Wert außerhalb der Grenzwerte",
  "practice/tried-contingency": "Eventualfall",
  "practice/tried-close": "Auswertung",
  "practice/is-tried": "ausprobiert",
  "practice/not-tried": "noch nicht",
  "practice/start":
    "Sie sind IV, innen: Sie lesen die Schritte vor und tippen an, was die beiden außen melden. Tippen Sie auf „Uhr der Probe starten“.",
  "practice/first":
    "Jedes Crewmitglied hat einen Strang am Rand, und wenn es wartet, hängt der Strang lose. {$crew :list} beginnt mit Schritt {$step}: Tippen Sie daneben auf „Erledigt“.",
  "practice/go-on":
    "Als Nächstes kommt Schritt {$step} von {$crew :list}: {$action}. Tippen Sie auf „Erledigt“, wenn Sie hören, dass er erledigt ist.",
  "practice/waits":
    "{$waiting} hat den gemeinsamen Schritt {$joint} erreicht und wartet dort auf {$missing}: Der Strang hängt lose bis dort hinunter. Weiter geht es mit Schritt {$step} von {$crew :list}.",
  "practice/joint":
    "{$crew :list} sind beide bei Schritt {$step}: Ein Knoten zieht ihre Stränge zusammen, und ein Tippen auf „Erledigt“ markiert den Schritt für beide.",
  "practice/joint-confirm":
    "{$crew :list} sind beide bei Schritt {$step}, wo ein Knoten ihre Stränge zusammenzieht. Hier bestätigt jemand: Tippen Sie auf „Bestätigt“, dann auf „Erledigt“; das markiert den Schritt für beide.",
  "practice/value-outside":
    "Schritt {$step} verlangt „{$record}“. Um eine Meldung zu sehen, tragen Sie {$value :quantity} ein; das liegt außerhalb der Grenzwerte neben dem Feld.",
  "practice/value":
    "Schritt {$step} verlangt wieder „{$record}“. Tragen Sie {$value :quantity} ein, und tippen Sie dann auf „Erledigt“.",
  "practice/owed":
    "Schritt {$step} ist ohne „{$record}“ erledigt; der Wert ist nun ausstehend, wie die Leiste oben sagt. Öffnen Sie den Schritt in der Liste, um den Wert einzutragen; oder machen Sie weiter, dann bleibt der Wert ausstehend.",
  "practice/within":
    "Das liegt innerhalb der Grenzwerte, daher kommt keine Meldung. Um eine Meldung zu sehen, tragen Sie für „{$record}“ stattdessen {$value :quantity} ein. {$else :message}",
  "practice/outside":
    "Der Wert liegt außerhalb seiner Grenzwerte: Eine Meldung unter der Uhr sagt es. Tippen Sie unten auf „Eventualfälle“, auf „{$contingency}“, dann auf „Hereinnehmen: ansehen, was das ergäbe“ und auf „Planänderung eintragen“. {$else :message}",
  "practice/or-go-on": "Oder machen Sie mit Schritt {$step} von {$crew :list} weiter.",
  "practice/go-on-anyhow": "Oder lassen Sie es.",
  "practice/brought":
    "Der Eventualfall steht nun im Plan, und die Auswertung wird sagen, was er gekostet hat. Schritt {$step} von {$crew :list} gehört dazu: {$action}. Tippen Sie auf „Erledigt“.",
  "practice/close":
    "Alle Schritte sind abgeschlossen. Tippen Sie unter der Liste auf „Einsatz abschließen“, und schließen Sie ihn ab.",
  "practice/nobody-works":
    "Im Augenblick kann niemand einen Schritt beginnen: Die Karten oben sagen, auf wen und worauf jedes Crewmitglied wartet.",
  "practice/held":
    "Der Einsatz ist angehalten, und seine Schritte warten. Tippen Sie auf „Halt aufheben“, wenn er weitergehen darf.",
  "practice/closed": "Der Einsatz ist abgeschlossen. Tippen Sie unter der Liste auf „Auswertung lesen“.",
  "practice/closed-early":
    "Sie haben den Einsatz vor seinem Ende abgeschlossen; das ist erlaubt. Tippen Sie unter der Liste auf „Auswertung lesen“, um zu sehen, was sie dazu sagt, oder öffnen Sie den Einsatz dort wieder.",
  "practice/review":
    "Das ist die Auswertung: das Geplante neben dem Geschehenen, wer auf wen gewartet hat, und alles, was anders verlief. Das war der Übungseinsatz; der nächste ist Ihrer.",
  "practice/skipped":
    "Sie haben Schritt {$step} übersprungen. Er gilt als abgeschlossen, und die Auswertung wird ihn nennen.",
  "practice/out-of-order":
    "Schritt {$step} wurde außer der Reihe markiert. Das wird angenommen, und die Auswertung wird ihn nennen.",
  "practice/open-again": "Schritt {$step} ist wieder geöffnet.",
};
