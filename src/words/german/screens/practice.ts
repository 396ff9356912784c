import type { practiceWords as english } from "../../english/screens/practice.ts";
import type { Translated } from "../../translated.ts";

/** The guide beside a practice walk, and what offers it. */
export const practiceWords: Translated<typeof english> = {
  "practice/guide": "Übungsführer",
  "practice/clock": "Probe · ihre Uhr läuft, solange Sie hinsehen",
  "practice/put-away": "Führer weglegen",
  "practice/bring-back": "Führer zeigen",
  "practice/finish": "Übung beenden",
  "practice/tried": "Versucht: {$count :integer} von {$all :integer}",
  "practice/tried-tap": "Antippen",
  "practice/tried-joint": "gemeinsamer Schritt",
  "practice/tried-value": "Wert außerhalb der Grenzen",
  "practice/tried-contingency": "Eventualfall",
  "practice/tried-close": "Auswertung",
  "practice/is-tried": "versucht",
  "practice/not-tried": "noch nicht",
  "practice/start":
    "Sie sind IV, drinnen: Sie lesen die Schritte vor und tippen an, was die beiden draußen melden. Tippen Sie auf „Uhr der Probe starten“.",
  "practice/first":
    "Jede Person hat einen Strang am Rand, und wer wartet, dessen Strang hängt lose. Zuerst kommt Schritt {$step} von {$crew :list}: Tippen Sie daneben auf „Erledigt“.",
  "practice/go-on":
    "Als Nächstes kommt Schritt {$step} von {$crew :list}: {$action}. Tippen Sie auf „Erledigt“, wenn Sie die Meldung hören.",
  "practice/waits":
    "{$waiting} hat den gemeinsamen Schritt {$joint} erreicht und wartet dort auf {$missing}: Der Strang hängt lose bis zu ihm hinab. Weiter geht es mit Schritt {$step} von {$crew :list}.",
  "practice/joint":
    "{$crew :list} sind bei Schritt {$step}: Ein Knoten zieht ihre Stränge zusammen, und ein Tippen auf „Erledigt“ gilt für beide.",
  "practice/joint-confirm":
    "{$crew :list} sind bei Schritt {$step}, wo ein Knoten ihre Stränge zusammenzieht. Hier wird bestätigt: Tippen Sie auf „Bestätigt“, dann auf „Erledigt“, das für beide gilt.",
  "practice/value-outside":
    "Schritt {$step} verlangt „{$record}“. Um einen Alarm zu sehen, geben Sie {$value :number} {$unit} ein; das liegt außerhalb der Grenzen neben dem Feld.",
  "practice/value":
    "Schritt {$step} verlangt wieder „{$record}“. Geben Sie {$value :number} {$unit} ein und tippen Sie dann auf „Erledigt“.",
  "practice/owed":
    "Schritt {$step} ist ohne „{$record}“ erledigt; der Wert steht nun aus, wie die Leiste oben sagt. Öffnen Sie den Schritt in der Liste, um ihn einzutragen; oder machen Sie weiter, dann bleibt er offen.",
  "practice/within":
    "Das liegt innerhalb der Grenzen, also wird nichts gemeldet. Um einen Alarm zu sehen, geben Sie stattdessen {$value :number} {$unit} für „{$record}“ ein. {$else :message}",
  "practice/outside":
    "Der Wert liegt außerhalb seiner Grenzen: Ein Alarm unter der Uhr sagt es. Tippen Sie unten auf „Eventualfälle“, „{$contingency}“, dann auf „Hereinnehmen: ansehen, was das ergäbe“ und „Planänderung eintragen“. {$else :message}",
  "practice/or-go-on": "Oder machen Sie mit Schritt {$step} von {$crew :list} weiter.",
  "practice/go-on-anyhow": "Oder lassen Sie es.",
  "practice/brought":
    "Der Eventualfall steht nun im Plan, und die Auswertung wird sagen, was er gekostet hat. Schritt {$step} von {$crew :list} gehört dazu: {$action}. Tippen Sie auf „Erledigt“.",
  "practice/close":
    "Jeder Schritt ist abgeschlossen. Tippen Sie unter der Liste auf „Einsatz abschließen“, und schließen Sie ihn ab.",
  "practice/nobody-works":
    "Im Augenblick kann niemand einen Schritt beginnen: Die Karten oben sagen, auf wen und worauf jede Person wartet.",
  "practice/held":
    "Der Einsatz ist angehalten, und seine Schritte warten. Tippen Sie auf „Halt aufheben“, wenn er weitergehen darf.",
  "practice/closed": "Der Einsatz ist abgeschlossen. Tippen Sie unter der Liste auf „Auswertung lesen“.",
  "practice/closed-early":
    "Sie haben den Einsatz vor seinem Ende abgeschlossen; das ist erlaubt. Tippen Sie unter der Liste auf „Auswertung lesen“, um zu sehen, was sie dazu sagt, oder öffnen Sie den Einsatz dort wieder.",
  "practice/review":
    "Das ist die Auswertung: das Geplante neben dem Geschehenen, wer auf wen gewartet hat, und alles, was anders verlief. Das war der Übungseinsatz; der nächste ist Ihrer.",
  "practice/skipped":
    "Sie haben Schritt {$step} ausgelassen. Er gilt als abgeschlossen, und die Auswertung wird ihn nennen.",
  "practice/out-of-order":
    "Schritt {$step} wurde außer der Reihe eingetragen. Das wird angenommen, und die Auswertung wird ihn nennen.",
  "practice/open-again": "Schritt {$step} ist wieder offen.",
};
