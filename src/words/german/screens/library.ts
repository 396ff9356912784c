import type { libraryWords as english } from "../../english/screens/library.ts";
import type { Translated } from "../../translated.ts";

/** The procedures that a hub keeps, and the help of that page. */
export const libraryWords: Translated<typeof english> = {
  "library/title": "Bibliothek des Hubs",
  "library/what": "Prozeduren, an denen mehrere Planende arbeiten",
  "library/alone":
    "Diese Bibliothek ist nur auf diesem Gerät. Mit einem Hub verbunden, kommt hierher, was andere ablegen, und was hier abgelegt wird, geht dorthin.",
  "library/join": "Bibliothek verbinden",
  "library/join-how":
    "Der Eigentümercode des Hubs öffnet seine Bibliothek, ebenso ein Code, den jemand mit der Rolle Leitung darin erzeugt. Die Bibliothek ist dann auch auf diesem Gerät gespeichert und geht hier weiter, wenn die Verbindung abreißt.",
  "library/linked": "{$hub}: {$state}, {$role}",
  "library/unsent":
    ".input {$count :integer} .match $count one {{Eine hier abgelegte Revision wurde noch nicht gesendet.}} * {{{$count} hier abgelegte Revisionen wurden noch nicht gesendet.}}",
  "library/link": "Verbindung und andere",
  "library/reading": "Die Bibliothek wird gelesen.",
  "library/not-read": "Die Bibliothek konnte nicht gelesen werden: {$why}",
  "library/empty": "In dieser Bibliothek ist noch keine Prozedur.",
  "library/unreadable":
    ".input {$count :integer} .match $count one {{Ein Eintrag enthält keine benennbare Prozedur und bleibt unberührt.}} * {{{$count} Einträge enthalten keine benennbare Prozedur und bleiben unberührt.}}",
  "library/apart":
    "Beide gehen auf {$base :message} zurück: {$one :message} und {$other :message}. Keine hat, was die andere hat.",
  "library/apart-no-base":
    "{$one :message} und {$other :message} sind weder auseinander noch aus einer gemeinsamen Revision hier entstanden. Keine hat, was die andere hat.",
  "library/more-heads":
    ".input {$count :integer} .match $count one {{Eine weitere Revision steht neben ihnen.}} * {{{$count} weitere Revisionen stehen neben ihnen.}}",
  "library/bring-together": "Zusammenführen",
  "library/bring-how":
    "Beide werden auf dieses Gerät übernommen und nebeneinandergelegt, Konflikt für Konflikt. Was Sie daraus speichern, steht in Ihrer Ablage: Legen Sie es dann hier ab, als aus beiden entstanden.",
  "library/name": "Revision {$revision} ({$by})",
  "library/name-bare": "Revision ohne Nummer ({$by})",
  "library/kept": "Abgelegt {$at :utc form=second} UTC",
  "library/latest": "Daraus ist noch nichts entstanden",
  "library/on-shelf": "In der Ablage dieses Geräts",
  "library/take": "Auf dieses Gerät übernehmen",
  "library/take-which": "{$name :message} auf dieses Gerät übernehmen",
  "library/refused":
    "Das ist keine Prozedur, die dieses Programm lesen kann: Öffnen Sie sie in der Bibliothek eines neueren.",
  "library/keep-title": "Eine Revision in der Bibliothek ablegen",
  "library/keep-which": "Welche aus der Ablage dieses Geräts",
  "library/keep-choice": "{$title}, Revision {$revision}",
  "library/keep-choice-bare": "{$title}",
  "library/keep-bases": "Woraus sie entstanden ist",
  "library/keep-bases-how":
    "Haken Sie an, was darin ist. Was nicht angehakt ist und woraus nichts entstanden ist, steht daneben, bis jemand beide zusammenführt.",
  "library/keep-new": "Von dieser Prozedur ist noch nichts in der Bibliothek.",
  "library/keep-from-none": "Aus keiner von diesen",
  "library/keep-who": "Wer ablegt",
  "library/keep-why": "Warum",
  "library/keep": "In der Bibliothek ablegen",
  "library/keep-known": "Dieser Text ist schon in der Bibliothek.",
  "library/keep-say": "Geben Sie an, woraus sie entstanden ist.",
  "library/keep-stale":
    "Daraus ist schon etwas anderes entstanden: Ihre Revision wird daneben stehen, und jemand muss beide zusammenführen.",
  "library/keep-may-not":
    "Nur wer in dieser Bibliothek die Rolle Leitung hat, legt Revisionen darin ab; Sie können übernehmen, was hier ist.",
  "library/keep-nothing":
    "In der Ablage dieses Geräts ist keine eigene Prozedur. Speichern Sie zuerst eine, oder lesen Sie eine ein.",
  "library/keep-done": "In der Bibliothek abgelegt: {$name :message}.",
  "guide/library": "Hilfe: die Bibliothek des Hubs",
  "guide/library-take":
    "Eine übernommene Revision liegt in der Ablage dieses Geräts, mit Angabe, wer sie warum abgelegt hat. Was in der Bibliothek ist, ändert sich dadurch nicht.",
  "guide/library-keep":
    "Beim Ablegen kommt die Datei einer Revision in die Bibliothek, wie sie ist. Geben Sie an, woraus sie entstanden ist. Dort wird nie etwas überschrieben oder herausgenommen.",
  "guide/library-apart":
    "Wenn zwei Planende von einer Revision aus weitergearbeitet haben, sind beide da, und es wird gesagt. Das Zusammenführen öffnet den Vergleich mit der Revision, aus der beide entstanden sind.",
  "guide/library-figures":
    "Eine Revision wird an ihrem Text erkannt: Ein Text ist eine Revision, wer ihn auch noch einmal ablegt.",
  "guide/library-offline":
    "Die Bibliothek geht auch ohne Verbindung. Was inzwischen abgelegt wird, wird gesendet, wenn die Verbindung zurück ist, und was andere abgelegt haben, kommt herein.",
  "guide/library-roles":
    "Mit dem Eigentümercode haben Sie die Rolle Leitung und können Codes für andere erzeugen. Wer als Protokollführung oder Beobachter zugelassen wurde, kann Revisionen übernehmen und keine ablegen.",
  "library-link/lead-may": "legt Revisionen in der Bibliothek ab und lässt andere ein",
  "library-link/reader-may": "nimmt Revisionen auf das eigene Gerät und legt keine ab",
  "library-link/take-follower-off": "{$follower} aus der Bibliothek nehmen",
  "library-link/take-unnamed-off": "Dieses Gerät aus der Bibliothek nehmen",
  "library-link/take-all-off-question": "Alle anderen aus dieser Bibliothek nehmen?",
  "library-link/take-all-off-how":
    ".input {$others :integer} .match $others 0 {{Für den Fall, dass ein Code oder ein Gerät in falschen Händen ist. Von sonst niemandem ist bekannt, dass er in der Bibliothek ist; alle Codes enden. Was abgelegt wurde, bleibt.}} one {{Für den Fall, dass ein Code oder ein Gerät in falschen Händen ist. {$others} anderes Gerät oder anderer Hub wird herausgenommen, und alle Codes enden. Was abgelegt wurde, bleibt.}} * {{Für den Fall, dass ein Code oder ein Gerät in falschen Händen ist. {$others} andere Geräte oder Hubs werden herausgenommen, und alle Codes enden. Was abgelegt wurde, bleibt.}}",
  "library-link/all-taken-off":
    ".input {$count :integer} .match $count 0 {{Sonst war niemand in der Bibliothek. Alle ihre Codes haben geendet.}} one {{{$count} Gerät wurde aus der Bibliothek genommen. Alle ihre Codes haben geendet.}} * {{{$count} Geräte wurden aus der Bibliothek genommen. Alle ihre Codes haben geendet.}}",
  "library-link/key-tied":
    "auf diesem Tablet gehalten, wo ihn niemand kopieren kann: Kein anderes Gerät kann in der Bibliothek an die Stelle dieses Tablets treten",
  "library-link/key-copyable":
    "auf diesem Tablet als Zahl gehalten, da sein Browser keine Schlüssel hält: Wer an die Daten des Tablets kommt, könnte ihn kopieren und in der Bibliothek an seine Stelle treten",
  "library-link/key-insecure":
    "keiner, weil diese Seite nicht über TLS geöffnet wurde: Verlässt dieses Tablet die Bibliothek, braucht es den Eigentümer des Hubs, um wieder hineinzukommen",
  "library-link/key-unsupported":
    "keiner, weil dieser Browser keinen erzeugen kann: Verlässt dieses Tablet die Bibliothek, braucht es den Eigentümer des Hubs, um wieder hineinzukommen",
  "library-link/key-not-kept":
    "keiner, weil dieses Tablet keinen behalten konnte: Verlässt es die Bibliothek, braucht es den Eigentümer des Hubs, um wieder hineinzukommen",
  "library-link/only-here":
    ".input {$count :integer} .match $count one {{{$count} Revision eines anderen Geräts ist nur auf diesem. Um sie zum Hub zu bringen, verlassen Sie ihn und verbinden Sie die Bibliothek mit dem Code des Eigentümers neu.}} * {{{$count} Revisionen anderer Geräte sind nur auf diesem. Um sie zum Hub zu bringen, verlassen Sie ihn und verbinden Sie die Bibliothek mit dem Code des Eigentümers neu.}}",
  "library-link/scan-or-open":
    "Scannen Sie ihn, oder öffnen Sie {$host} und wählen Sie dort den Beitritt zu einem Einsatz und dann die Bibliothek des Hubs.",
};
