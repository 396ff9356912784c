import type { sealWords as english } from "../../english/screens/seal.ts";
import type { Translated } from "../../translated.ts";

/** What a log is worth as a record. */
export const sealWords: Translated<typeof english> = {
  "seal/verdict-whole": "lückenlos",
  "seal/verdict-intact": "unversehrt",
  "seal/verdict-partly": "teilweise verbürgt",
  "seal/verdict-cut": "abgeschnitten",
  "seal/verdict-forked": "gegabelt",
  "seal/verdict-broken": "gebrochen",
  "seal/log-whole":
    "Lückenlos: Der Außeneinsatz ist abgeschlossen, und jeder Eintrag ist, wie er war, als ein vertrauenswürdiger Hub seinen letzten Prüfpunkt setzte.",
  "seal/log-intact":
    "Unversehrt: Nichts wurde geändert, und für alle wird gebürgt; was hinter dem letzten Prüfpunkt steht, könnte unbemerkt abgeschnitten sein.",
  "seal/log-partly":
    "Teilweise verbürgt: Nichts zeigt, dass ein Eintrag geändert wurde, aber manche haben kein Siegel, oder für sie bürgt ein Schlüssel, dem niemand vertraut hat.",
  "seal/log-cut": "Abgeschnitten: Einträge fehlen.",
  "seal/log-forked": "Gegabelt: Der Schlüssel eines Geräts hat zwei Verläufe versiegelt.",
  "seal/log-broken":
    "Gebrochen: Ein Eintrag wurde seit seiner Entstehung geändert, eingefügt oder umgeordnet.",
  "seal/quick": "Das war ein schneller Blick: ein Siegel je Folge von Einträgen.",
  "seal/extract-whole":
    "Lückenlos: Jeder Eintrag in diesem Auszug ist, wie er war, als ein vertrauenswürdiger Hub den Prüfpunkt setzte.",
  "seal/extract-intact":
    "Unversehrt: Nichts wurde geändert, und für alle wird gebürgt, aber der Prüfpunkt enthielt einige der Einträge nicht.",
  "seal/extract-partly":
    "Teilweise verbürgt: Nichts zeigt, dass ein Eintrag geändert wurde, aber manche haben kein Siegel, oder für sie bürgt ein Schlüssel, dem niemand vertraut hat.",
  "seal/extract-cut": "Abgeschnitten: Einträge fehlen.",
  "seal/extract-forked": "Gegabelt: Der Schlüssel eines Geräts hat zwei Verläufe versiegelt.",
  "seal/extract-broken":
    "Gebrochen: Ein Eintrag wurde seit seiner Entstehung geändert oder eingefügt, oder sein Beweis stimmt nicht.",
  "seal/extract-proves-not":
    "Das beweist nicht, was die weggelassenen Einträge sagen, dass dies die wesentlichen sind, dass ein Eintrag wahr ist, wer das Tablet hielt, die wahre Zeit oder dass der Hub ehrlich ist.",
  "seal/found-seal-does-not-fit": "das Siegel passt nicht zum Eintrag",
  "seal/found-other-key": "er hat einen anderen Schlüssel als bei der Zulassung oder einen abgelehnten",
  "seal/found-does-not-follow": "er folgt nicht auf den Eintrag davor",
  "seal/found-forged-twin": "es gibt zwei Einträge mit dieser Nummer, und einer ist gefälscht",
  "seal/found-seals-stripped": "zugelassen mit einem Schlüssel, und kein Eintrag hat ein Siegel",
  "seal/found-not-proven": "sein Beweis führt nicht zum Prüfpunkt",
  "seal/found-other-walk": "er ist ein Eintrag eines anderen Außeneinsatzes",
  "seal/found-other-entries":
    "der Prüfpunkt enthielt andere Einträge als hier stehen; wer sie geändert hat, sagt er nicht",
  "seal/found-other-order":
    "der Prüfpunkt enthielt die Einträge in anderer Reihenfolge als hier; wer sie geändert hat, sagt er nicht",
  "seal/found-unreadable-checkpoint": "der Prüfpunkt ist nicht lesbar",
  "seal/found-two-histories": "es gibt zwei Verläufe, beide mit diesem Schlüssel versiegelt",
  "seal/found-missing": "von dieser Nummer an fehlt ein Eintrag",
  "seal/found-unsealed": "von dieser Nummer an haben Einträge kein Siegel",
  "seal/found-nobody-vouches": "niemand, dem vertraut wird, bürgt für den Schlüssel",
  "seal/found-other-role": "das Gerät hat einen Eintrag gemacht, den seine Rolle nicht machen darf",
  "seal/checkpoint-fits": "passt",
  "seal/checkpoint-cut": "enthielt mehr, als hier ist",
  "seal/checkpoint-other-entries": "enthielt andere Einträge",
  "seal/checkpoint-other-order": "enthielt eine andere Reihenfolge",
  "seal/checkpoint-unreadable": "ist nicht lesbar",
  "seal/checkpoint-not-looked-at": "nicht betrachtet",
  "seal/trusted": "vertrauenswürdig",
  "seal/not-trusted": "nicht vertrauenswürdig",
  "seal/letter":
    ".input {$letter :string} .match $letter A {{Alfa}} B {{Bravo}} C {{Charlie}} D {{Delta}} E {{Echo}} F {{Foxtrot}} G {{Golf}} H {{Hotel}} J {{Juliett}} K {{Kilo}} M {{Mike}} N {{November}} P {{Papa}} Q {{Quebec}} R {{Romeo}} S {{Sierra}} T {{Tango}} U {{Uniform}} V {{Victor}} W {{Whiskey}} X {{X-ray}} Y {{Yankee}} Z {{Zulu}} |0| {{Null}} |2| {{Zwo}} |3| {{Drei}} |4| {{Vier}} |5| {{Fünf}} |6| {{Sechs}} |7| {{Sieben}} |8| {{Acht}} |9| {{Neun}} * {{{$letter}}}",
  "seal/title": "Ist das Protokoll, wie es eingetragen wurde?",
  "seal/in-short": "Das Protokoll ist {$verdict}",
  "seal/in-short-unknown": "Das Protokoll ist nicht nachgeprüft",
  "seal/loading": "Was sagt, ob das Protokoll ist, wie es eingetragen wurde, wird geladen.",
  "seal/missing":
    "Was sagt, ob das Protokoll ist, wie es eingetragen wurde, konnte nicht geladen werden. Sonst ist nichts betroffen.",
  "seal/working-quick": "Ein schneller Blick auf die Siegel läuft.",
  "seal/working-full": "Jedes Siegel wird betrachtet: bisher {$done :integer} von {$of :integer} Einträgen.",
  "seal/cancel": "Nachprüfen beenden",
  "seal/cancelled": "Das Protokoll wurde nicht nachgeprüft: Das Nachprüfen wurde beendet.",
  "seal/failed":
    "Das Protokoll konnte hier nicht nachgeprüft werden. Die Befehlszeile kann ein exportiertes Protokoll nachprüfen.",
  "seal/look-quick": "Schnell nachprüfen",
  "seal/look-full": "Jedes Siegel nachprüfen",
  "seal/looked-full": "Jedes Siegel wurde betrachtet.",
  "seal/newer":
    ".input {$count :integer} .match $count one {{Seither ist ein Eintrag gekommen; über ihn wird nichts gesagt.}} * {{Seither sind {$count} Einträge gekommen; über sie wird nichts gesagt.}}",
  "seal/changed-since": "Das Protokoll hat sich seither geändert.",
  "seal/devices": "Wer was eingetragen hat",
  "seal/device-as": "{$name}, {$role}",
  "seal/role-hub": "Hub",
  "seal/not-admitted": "kein Hub sagt, wer das ist",
  "seal/device-entries":
    ".input {$entries :integer} .match $entries one {{Ein Eintrag}} * {{{$entries} Einträge}}",
  "seal/device-sealed": "{$sealed :integer} versiegelt",
  "seal/device-behind": "{$behind :integer} hinter dem letzten vertrauenswürdigen Prüfpunkt",
  "seal/found-at": "Nummer {$number :integer}: {$what}.",
  "seal/found-source": "Alles davon: {$what}.",
  "seal/checkpoints":
    ".input {$count :integer} .match $count one {{Ein Prüfpunkt}} * {{{$count} Prüfpunkte}}",
  "seal/checkpoint":
    ".input {$entries :integer} .match $entries one {{{$code}, über {$entries} Eintrag, von {$by} ({$trust}): {$state}}} * {{{$code}, über {$entries} Einträge, von {$by} ({$trust}): {$state}}}",
  "seal/code-title": "Sprechcode",
  "seal/code-of":
    ".input {$entries :integer} .match $entries one {{Der Code des einen Eintrags hier.}} * {{Der Code der {$entries} Einträge hier.}}",
  "seal/code-how":
    "Lesen Sie ihn einem anderen Standort Buchstabe für Buchstabe vor. Derselbe Code dort bedeutet dieselben Einträge in derselben Reihenfolge.",
  "seal/code-make": "Sprechcode berechnen",
  "seal/code-again": "Neu berechnen",
  "seal/code-working": "Der Sprechcode wird berechnet.",
  "seal/code-verdict": "Ob das Protokoll ist, wie es eingetragen wurde, steht in der Auswertung.",
  "seal/code-root": "Wurzel",
  "seal/code-order": "Reihenfolge",
  "seal/code-qr": "QR-Code: der Außeneinsatz, die Anzahl der Einträge, Wurzel und Reihenfolge",
  "seal/heard-label": "Der Code, den der andere Standort vorliest",
  "seal/heard-letters":
    "Zwölf Buchstaben, groß oder klein, mit oder ohne Bindestriche. I, L, O und 1 sind nie dabei.",
  "seal/heard-same":
    ".input {$entries :integer} .match $entries one {{Derselbe: Beide Standorte haben diesen einen Eintrag.}} * {{Derselbe: Beide Standorte haben diese {$entries} Einträge in derselben Reihenfolge.}}",
  "seal/heard-same-then":
    ".input {$entries :integer} .match $entries one {{Derselbe wie bei einem Prüfpunkt über {$entries} Eintrag: Damals hatten beide Standorte dasselbe. Hier sind es jetzt {$all :integer}.}} * {{Derselbe wie bei einem Prüfpunkt über {$entries} Einträge: Damals hatten beide Standorte dasselbe. Hier sind es jetzt {$all :integer}.}}",
  "seal/heard-differs":
    "Nicht derselbe. Etwas wurde falsch verstanden, oder der andere Standort hat andere Einträge.",
  "seal/heard-group": "Gruppe {$group :integer}: hier {$here}, dort {$there}",
  "seal/heard-letters-said": "{$letters} ({$said})",
  "seal/trust-title": "Hubs, denen Sie vertrauen",
  "seal/trust-none":
    "Sie vertrauen noch keinem Hub, daher lässt sich von einem Protokoll bestenfalls sagen, dass es teilweise verbürgt ist.",
  "seal/trust-how":
    "Der Schlüssel eines Hubs steht auf seinem Startbildschirm und auf gedruckten Auswertungen. Nehmen Sie ihn von dort, nie aus dem Protokoll, das nachgeprüft wird. Er wird auf diesem Gerät gespeichert.",
  "seal/trust-field": "Schlüssel eines Hubs",
  "seal/trust-add": "Diesem Schlüssel vertrauen",
  "seal/trust-bad":
    "Das ist kein Schlüssel eines Hubs: Er hat 43 Buchstaben, Ziffern, Bindestriche und Unterstriche.",
  "seal/trust-forget": "Vergessen",
  "seal/trust-forget-which": "Schlüssel {$key} vergessen",
  "seal/trust-in-log":
    "Dieses Protokoll nennt den Hub {$name} mit dem Schlüssel unten. Vergleichen Sie ihn mit dem Bildschirm des Hubs oder einem dort gedruckten Blatt, bevor Sie ihm vertrauen.",
  "seal/trust-same": "Dort ist er gleich: vertrauen",
  "seal/hub-key": "Schlüssel von {$name}",
  "seal/extract-title": "Auszug für andere",
  "seal/extract-how":
    "Einige Einträge in voller Länge, jeder mit dem Beweis, dass ein Prüfpunkt eines Hubs ihn enthielt. Von den anderen enthält er nur die Nummern; ein kurzer, der neben einem gezeigten Eintrag steht, lässt sich erraten, und was geraten ist, lässt sich prüfen.",
  "seal/extract-kinds": "Welche Einträge",
  "seal/extract-kind": "{$kind :message} ({$count :integer})",
  "seal/extract-task": "Zu welcher Aufgabe",
  "seal/extract-all-tasks": "Gleich wozu sie gehören",
  "seal/extract-make": "Auszug erstellen",
  "seal/extract-working": "Der Auszug wird erstellt.",
  "seal/extract-made":
    ".input {$chosen :integer} .match $chosen one {{Der Auszug hat einen Eintrag in voller Länge und lässt {$left :integer} weg.}} * {{Der Auszug hat {$chosen} Einträge in voller Länge und lässt {$left :integer} weg.}}",
  "seal/extract-nothing-chosen": "Kein Eintrag des Protokolls ist von dieser Art und zu dieser Aufgabe.",
  "seal/extract-no-checkpoint":
    "Das Protokoll hat keinen passenden Prüfpunkt eines Hubs: Es gibt nichts, womit sich ein Auszug beweisen ließe.",
  "seal/extract-behind":
    ".input {$count :integer} .match $count one {{Einen dieser Einträge enthielt noch kein Prüfpunkt. Versuchen Sie es noch einmal, wenn der Hub einen weiteren gesetzt hat.}} * {{{$count} dieser Einträge enthielt noch kein Prüfpunkt. Versuchen Sie es noch einmal, wenn der Hub einen weiteren gesetzt hat.}}",
  "seal/extract-failed":
    "Der Auszug konnte hier nicht erstellt werden. Die Befehlszeile kann einen aus einem exportierten Protokoll erstellen.",
  "seal/extract-no-head": "sagt nicht, wovon es ein Auszug ist",
  "seal/extract-no-path": "hat einen Beweis, der nicht lesbar ist",
  "seal/extract-of":
    ".input {$entries :integer} .match $entries one {{Ein Auszug aus {$walk}: {$entries} Eintrag in voller Länge, bewiesen durch einen Prüfpunkt über {$held :integer}.}} * {{Ein Auszug aus {$walk}: {$entries} Einträge in voller Länge, bewiesen durch einen Prüfpunkt über {$held :integer}.}}",
  "seal/extract-of-unproven":
    ".input {$entries :integer} .match $entries one {{Ein Auszug aus {$walk}: {$entries} Eintrag in voller Länge, und kein Prüfpunkt, der ihn beweist.}} * {{Ein Auszug aus {$walk}: {$entries} Einträge in voller Länge, und kein Prüfpunkt, der sie beweist.}}",
  "seal/extract-left-out": "Weggelassen von {$source}: {$numbers}.",
  "seal/extract-page": "Ein Auszug aus einem Protokoll",
  "seal/extract-code-of": "Der Code des Prüfpunkts; so viele Einträge hatte er: {$entries :integer}.",
  "seal/extract-heard-same": "Derselbe: Die andere Stelle hat, was der Prüfpunkt hatte.",
  "seal/extract-entries": "Die Einträge, die er zeigt",
  "seal/extract-hub-entries": "Was Hubs eingetragen haben ({$count :integer})",
  "seal/extract-number": "{$name}, Nummer {$number :integer}",
  "seal/extract-nothing": "Kein Eintrag davon ist lesbar.",
  "seal/extract-gone": "Der Auszug ist nicht mehr offen: Wählen Sie seine Datei in der Ablage noch einmal.",
  "seal/may-be-kept-back":
    "Dies ist eine Probe, die nicht abgeschlossen ist. Ihr Hub hält bis dahin Überraschungen zurück; was hier fehlt, gehört vielleicht zu ihnen: Sehen Sie nach dem Abschließen noch einmal nach.",
  "seal/proves-not":
    "Das beweist nicht, dass ein Eintrag wahr ist, wer das Tablet hielt, die wahre Zeit, was nie eingetragen wurde, einen Schnitt hinter dem letzten Prüfpunkt oder dass ein Hub ehrlich ist, der den einzigen Prüfpunkt hat.",
};
