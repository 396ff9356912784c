import type { trainWords as english } from "../../english/screens/train.ts";
import type { Translated } from "../../translated.ts";

/** The trainer's screen. */
export const trainWords: Translated<typeof english> = {
  "train/title": "Überraschungen",
  "train/no-rehearsal": "Dieser Außeneinsatz ist keine Probe und nimmt keine Überraschungen auf.",
  "train/not-for-followers":
    "Überraschungen sind für den Trainer. Wer begleitet, erfährt nichts davon, bevor der Außeneinsatz abgeschlossen ist.",
  "train/told-in-review":
    "Der Außeneinsatz ist abgeschlossen. Seine Auswertung sagt, was aus jeder Überraschung wurde.",
  "train/none": "Mit „{$title}“ kommen keine Überraschungen. Wählen Sie eine Datei mit welchen.",
  "train/choose-file": "Datei wählen …",
  "train/file-given":
    "Das sind Überraschungen für Proben der Prozedur „{$procedure}“. Auf diesem Gerät stehen sie bereit, unter „Überraschungen“ auf der Seite „Begleiten“ einer solchen Probe.",
  "train/file-for-none":
    "Das sind Überraschungen; sie gehören unter „Überraschungen“ auf der Seite „Begleiten“ einer Probe. Die Datei sagt nicht, zu welcher Prozedur, und nichts davon wurde gespeichert.",
  "train/findings": "Was an der Datei nicht stimmt",
  "train/finding-at": "Zeile {$line :integer}: {$finding :message}",
  "train/not-entered": "Das konnte nicht eingetragen werden: {$why}",
  "train/no-effect": "Das wurde eingetragen und hat keine Wirkung: {$why :message}.",
  "train/kept-back":
    "Die Probe wird auch auf diesem Gerät begleitet. Bis sie abgeschlossen ist, zeigen Liste, Zeitleiste, Karte und bisherige Auswertung, was eine Überraschung bewirkt, und nie, dass es eine ist. Im Protokoll, auch im exportierten, sind Überraschungen so geschrieben, dass niemand sie aus Versehen liest; das ist kein Schloss.",
  "train/show-them": "Ich bin Trainer: Überraschungen zeigen",
  "train/hide-them": "Überraschungen verbergen",
  "train/lay-how":
    ".input {$count :integer} .match $count one {{Der Startwert bestimmt, ob diese {$count} Überraschung kommt. Ihnen wird es nicht gesagt.}} * {{Der Startwert bestimmt, welche dieser {$count} Überraschungen kommen und wann. Ihnen wird nicht gesagt, welche.}}",
  "train/seed": "Startwert: Derselbe ergibt dasselbe",
  "train/lay": "Auslosen und vorsehen",
  "train/laid":
    ".input {$count :integer} .match $count 0 {{Der Startwert ergab keine.}} one {{{$count} Überraschung ist vorgesehen.}} * {{{$count} Überraschungen sind vorgesehen.}}",
  "train/are-laid":
    ".input {$count :integer} .match $count one {{Diese Probe enthält {$count} Überraschung. Welche, steht in der Auswertung, sobald die Probe abgeschlossen ist.}} * {{Diese Probe enthält {$count} Überraschungen. Welche, steht in der Auswertung, sobald die Probe abgeschlossen ist.}}",
  "train/too-late-to-lay":
    "Die Uhr ist gestartet, daher lässt sich nichts mehr vorsehen. Überraschungen lassen sich noch von Hand auslösen: hier, oder von einem Trainer, der über einen Hub beigetreten ist.",
  "train/fired": "„{$title}“ wurde ausgelöst.",
  "train/not-started": "Überraschungen lassen sich auslösen, sobald die Uhr gestartet ist.",
  "train/expected": "Erwartet von {$crew} innerhalb von {$time :length}: {$notice} {$act}",
  "train/by-itself": "Nicht ausgelöst. Wenn vorgesehen, kommt sie von selbst: {$when :message}",
  "train/laid-for": "Vorgesehen. Sie kommt von selbst: {$when :message}",
  "train/was-fired": "Ausgelöst bei PET {$at}.",
  "train/came": "Gekommen bei PET {$at}.",
  "train/nobody-yet": "Noch zeigt kein Eintrag, dass sie bemerkt wurde.",
  "train/first-sign":
    "Erstes Zeichen {$time :length form=second} nach ihrem Eintreten, von {$who}: {$what :message}",
  "train/fire": "Auslösen",
  "train/fire-which": "„{$title}“ auslösen",
  "train/fire-now": "„{$title}“ jetzt auslösen",
  "train/leave": "Nicht jetzt",
  "train/sight": "Was die Begleiter sehen",
  "train/at": "PET {$at}",
  "train/crew": "Crew",
  "train/lane-ready": "bereit",
  "train/lane-waiting": "wartet",
  "train/lane-working": "arbeitet",
  "train/lane-finished": "ist fertig",
  "train/unseen": "Niemand hat sie gesehen.",
  "train/seen": "Gesehen: {$who}.",
  "guide/train": "Hilfe: Überraschungen",
  "guide/train-what":
    "Eine Probe kann Überraschungen enthalten, die ein Trainer in eine Datei geschrieben hat: ein Schritt, der lange dauert, ein Wert außerhalb der Grenzwerte, ein Gegenstand, der nicht da ist, jemand, von dem nichts zu hören ist, ein Vorrat, der fällt, eine Entscheidung mit anderem Ergebnis.",
  "guide/train-lay":
    "Bevor die Uhr startet, bestimmt ein Startwert, welche davon kommen und wann; niemandem wird gesagt, welche. Dafür ist kein Trainer nötig.",
  "guide/train-fire":
    "Ein Trainer tritt mit einem Code eines Hubs als Trainer bei, sieht alles und löst Überraschungen von Hand aus. Was ausgelöst ist, kommt sofort und wird nicht zurückgenommen. Das Tablet des Trainers markiert nichts.",
  "guide/train-here":
    "Ohne Hub, oder auf dem Tablet, das die Crew spielt, öffnet der Trainer diese Seite dort, auch in einem zweiten Tab, und sagt es; bis dahin zeigt sie keine davon. Ein Netz ist nicht nötig. Was zweimal ausgelöst wird, zählt einmal, und was nach dem Abschließen ausgelöst wird, hat keine Wirkung.",
  "guide/train-file":
    "Eine Datei mit Überraschungen lässt sich auch in der Ablage einlesen. Die Überraschungen stehen dann hier, auf diesem Gerät, für jede Probe ihrer Prozedur bereit.",
  "guide/train-play":
    "Die gespielte Crew tut, was die Überraschung sagt; gespielt wird die Crew auf dem Tablet, das die Probe geöffnet hat. Begleiter sehen, was sie sehen würden: einen Wert, einen Vorrat, einen Schritt, der lange dauert, und die Meldungen, die daraus folgen.",
  "guide/train-hidden":
    "Auf anderen Tablets werden Überraschungen weder gezeigt noch gesendet, bevor der Außeneinsatz abgeschlossen ist. Auf dem Tablet, das die Crew spielt, stehen sie im Protokoll, so geschrieben, dass niemand sie aus Versehen liest; das ist kein Schloss.",
  "guide/train-review":
    "Die Auswertung des abgeschlossenen Außeneinsatzes sagt von jeder, wann sie kam, welcher Eintrag zuerst zeigt, dass jemand sie bemerkt hat, was getan wurde und was es kostete, neben dem, was erwartet wurde. Noten gibt es nicht.",
  "guide/train-wrong":
    "Eine Datei für eine andere Prozedur, oder eine, die nennt, was es nicht gibt, wird nicht angenommen: Jeder Befund nennt seine Zeile.",
};
