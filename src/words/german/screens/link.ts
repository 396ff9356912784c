import type { linkWords as english } from "../../english/screens/link.ts";
import type { Translated } from "../../translated.ts";

/** Joining, sharing and following a walk over a hub. */
export const linkWords: Translated<typeof english> = {
  "link/clock-set-back":
    "Die Uhr dieses Geräts wurde um {$by :length} zurückgestellt. Die Zeiten dieses Außeneinsatzes gehen weiter, als wäre das nicht geschehen.",
  "link/clock-set-ahead":
    "Die Uhr dieses Geräts wurde um {$by :length} vorgestellt. Die Zeiten dieses Außeneinsatzes gehen weiter, als wäre das nicht geschehen.",
  "link/join-title": "Einsatz beitreten",
  "link/join-what": "Mit dem Code, den die Leitung zeigt",
  "link/fetching": "Der Außeneinsatz wird vom Hub geholt …",
  "link/fetching-of": "Der Außeneinsatz wird vom Hub geholt: {$come :integer} von {$of :integer} Einträgen …",
  "link/asking-for-walk": "Dieser Außeneinsatz ist nicht auf diesem Gerät. Der Hub wird danach gefragt …",
  "link/no-walk-no-hub":
    "Diesen Außeneinsatz gibt es auf diesem Gerät nicht, und kein Hub antwortet, von dem er zurückkommen könnte. Alle 10 Sekunden wird wieder gefragt.",
  "link/no-walk-no-member":
    "Diesen Außeneinsatz gibt es auf diesem Gerät nicht, und der Hub kennt diesen Browser in keinem dieses Namens. Wenn er hier begleitet wurde, ist gelöscht, was dieses Gerät gespeichert hatte: Treten Sie dem Außeneinsatz mit einem neuen Code bei; alles, was den Hub erreicht hat, kommt zurück.",
  "link/no-walk-other-name":
    "Diesen Außeneinsatz gibt es auf diesem Gerät nicht. Er wurde hier begleitet, bevor gelöscht wurde, was dieses Gerät gespeichert hatte, und seither hat dieses Gerät andere Außeneinsätze begonnen: Treten Sie dem Außeneinsatz mit einem neuen Code bei; alles, was den Hub erreicht hat, kommt zurück.",
  "link/who-uses": "Wer dieses Tablet benutzt",
  "link/asking": "Der Hub wird gefragt …",
  "link/over-the-gap": "Gegenseite",
  "link/nobody-known": "Der Hub hat noch nicht gesagt, wer begleitet.",
  "link/unnamed": "ohne Namen",
  "link/this-tablet": "dieses Tablet",
  "link/take-off": "Entfernen",
  "link/take-all-off": "Alle entfernen …",
  "link/take-all-off-question": "Alle anderen aus diesem Außeneinsatz entfernen?",
  "link/take-all-off-how":
    ".input {$others :integer} .match $others 0 {{Für den Fall, dass ein Code oder ein Tablet in falschen Händen ist. Soweit bekannt, ist niemand sonst im Außeneinsatz; alle Codes werden ungültig. Was eingetragen wurde, bleibt.}} one {{Für den Fall, dass ein Code oder ein Tablet in falschen Händen ist. {$others} anderes Gerät oder anderer Hub macht allein weiter, und von dort kommt nichts mehr, bis ein neuer Code da ist; alle Codes werden ungültig. Was eingetragen wurde, bleibt.}} * {{Für den Fall, dass ein Code oder ein Tablet in falschen Händen ist. {$others} andere Geräte oder Hubs machen allein weiter, und von dort kommt nichts mehr, bis ein neuer Code da ist; alle Codes werden ungültig. Was eingetragen wurde, bleibt.}}",
  "link/take-all-off-now": "Alle entfernen",
  "link/keep-all": "Behalten",
  "link/all-taken-off":
    ".input {$count :integer} .match $count 0 {{Niemand sonst war im Außeneinsatz. Alle Codes sind ungültig.}} one {{{$count} Gerät wurde entfernt. Alle Codes sind ungültig.}} * {{{$count} Geräte wurden entfernt. Alle Codes sind ungültig.}}",
  "link/take-follower-off": "{$follower} aus dem Außeneinsatz entfernen",
  "link/take-unnamed-off": "Diesen Begleiter aus dem Außeneinsatz entfernen",
  "link/offer-marker": "Protokollführung",
  "link/offer-marker-may": "markiert Schritte, trägt Messwerte und Notizen ein",
  "link/offer-watcher": "Beobachter",
  "link/offer-watcher-may": "liest nur",
  "link/offer-trainer": "Trainer",
  "link/offer-trainer-may": "sieht alles und löst in einer Probe Überraschungen aus",
  "link/offer-lead": "Leitung",
  "link/offer-lead-may": "schließt auch den Außeneinsatz ab und lässt andere zu",
  "link/no-code": "Der Hub hat keinen Code ausgegeben: {$why}",
  "link/invite": "Weiteres Tablet zulassen",
  "link/role": "Rolle",
  "link/how-many-tablets": "Für wie viele Tablets er gilt",
  "link/code-for":
    ".input {$count :integer} .match $count one {{Gilt für {$count} Tablet.}} * {{Gilt für {$count} Tablets, für jedes einmal.}}",
  "link/make-code": "Code erzeugen",
  "link/qr-code": "Die Adresse zum Beitreten als QR-Code",
  "link/lets-in-as-lead": "Lässt noch {$left :margin} als Leitung zu.",
  "link/lets-in-as-marker": "Lässt noch {$left :margin} als Protokollführung zu.",
  "link/lets-in-as-watcher": "Lässt noch {$left :margin} als Beobachter zu.",
  "link/lets-in-as-trainer": "Lässt noch {$left :margin} als Trainer zu.",
  "link/lets-in-as-relay": "Lässt noch {$left :margin} als Relais zu.",
  "link/code-expired": "Dieser Code ist abgelaufen: Erzeugen Sie einen neuen.",
  "link/open-codes": "Noch gültige Codes",
  "link/open-code":
    ".input {$count :integer} .match $count one {{Rolle {$role}: noch {$count} Tablet, noch {$left :margin}.}} * {{Rolle {$role}: noch {$count} Tablets, noch {$left :margin}.}}",
  "link/end-code": "Code ungültig machen",
  "link/codes-not-told": "Der Hub hat nicht gesagt, welche Codes noch gültig sind: {$why}",
  "link/scan-or-open": "Einlesen, oder {$host} öffnen und „Einsatz beitreten“ wählen.",
  "link/code-field": "Code (neun Buchstaben und Ziffern)",
  "link/join-example": "zum Beispiel Boden oder IV",
  "link/join": "Einsatz beitreten",
  "link/join-how":
    "Die Leitung des Außeneinsatzes findet unter „Mehr“, „Verbindung und Begleiter“ einen Code. Der Außeneinsatz wird dann auch auf diesem Tablet gespeichert und geht hier weiter, wenn die Verbindung abreißt.",
  "link/state-alone": "allein",
  "link/state-linking": "verbindet: versucht, den Hub zu erreichen",
  "link/state-linked": "verbunden",
  "link/state-ended": "beendet",
  "link/title": "Verbindung",
  "link/hub": "Hub",
  "link/role-here": "Dieses Tablet",
  "link/key-here": "Sein Schlüssel",
  "link/key-tied":
    "auf diesem Tablet, wo ihn niemand kopieren kann: Kein anderes Gerät kann den Platz dieses Tablets im Außeneinsatz einnehmen",
  "link/key-copyable":
    "auf diesem Tablet als Zahl, weil sein Browser keine Schlüssel aufbewahrt: Wer an die Daten des Tablets kommt, könnte ihn kopieren und seinen Platz im Außeneinsatz einnehmen",
  "link/key-insecure":
    "keiner, weil diese Seite nicht über TLS geöffnet wurde: Wenn dieses Tablet den Außeneinsatz verlässt, braucht es zum Wiederkommen den Eigentümer des Hubs",
  "link/key-unsupported":
    "keiner, weil dieser Browser keinen erzeugen kann: Wenn dieses Tablet den Außeneinsatz verlässt, braucht es zum Wiederkommen den Eigentümer des Hubs",
  "link/key-not-kept":
    "keiner, weil dieses Tablet keinen speichern konnte: Wenn es den Außeneinsatz verlässt, braucht es zum Wiederkommen den Eigentümer des Hubs",
  "link/entries": "Einträge",
  "link/last-word": "Zuletzt gehört",
  "link/clock-here": "Uhr hier",
  "link/beyond": "Gegenseite",
  "link/beyond-hub": "{$what}.",
  "link/followers": "Begleiter",
  "link/leave-title": "Verlassen",
  "link/leave-how": "Was hier gespeichert ist, bleibt hier; nichts wird mehr gesendet oder geholt.",
  "link/leave-unsent":
    ".input {$count :integer} .match $count one {{Was hier gespeichert ist, bleibt hier; nichts wird mehr gesendet oder geholt. {$count} Eintrag wurde noch nicht gesendet.}} * {{Was hier gespeichert ist, bleibt hier; nichts wird mehr gesendet oder geholt. {$count} Einträge wurden noch nicht gesendet.}}",
  "link/leave": "Hub verlassen",
  "link/clock-agrees":
    "stimmt mit der des Hubs überein (± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s)",
  "link/clock-ahead":
    "{$size :message} vor der des Hubs (± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s)",
  "link/clock-behind":
    "{$size :message} hinter der des Hubs (± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s)",
  "link/seconds": "{$size :number minimumFractionDigits=1 maximumFractionDigits=1} s",
  "link/minutes": "{$size :integer} min",
  "link/hours": "{$size :number minimumFractionDigits=1 maximumFractionDigits=1} h",
  "link/all-sent": "alles gesendet",
  "link/fetched-of": "{$come :integer} von {$of :integer} Einträgen geholt",
  "link/not-sent": "{$count :integer} nicht gesendet",
  "link/only-here":
    ".input {$count :integer} .match $count one {{{$count} Eintrag eines anderen Geräts ist nur auf diesem Tablet. Um ihn zum Hub zu bringen, verlassen Sie den Hub und teilen den Außeneinsatz mit dem Eigentümercode neu.}} * {{{$count} Einträge anderer Geräte sind nur auf diesem Tablet. Um sie zum Hub zu bringen, verlassen Sie den Hub und teilen den Außeneinsatz mit dem Eigentümercode neu.}}",
  "link/never-heard": "nie gehört",
  "link/heard-seconds-ago": "gehört vor {$seconds :integer} s",
  "link/heard-ago": "gehört vor {$ago :length}",
  "link/in-memory": "Nur im Arbeitsspeicher",
  "link/export-before-closing": "vor dem Schließen exportieren",
  "link/bar-alone": "Nur dieses Gerät",
  "link/kept-here": "Protokoll ist hier",
  "link/bar-linking": "Verbindet · {$heard}",
  "link/bar-linked": "Verbunden",
  "link/bar-linked-heard": "Verbunden · {$heard}",
  "link/bar-ended": "Verbindung beendet",
  "link/kept-here-only": "nur hier gespeichert",
  "link/at-utc": "{$at :utc form=time-second} UTC",
  "link/another-hub": "ein anderer Hub",
  "link/is-reading": "liest mit",
  "link/seen-nothing": "hat noch nichts gesehen",
  "link/seen-all": "hat alles gesehen",
  "link/seen-up-to": "hat alles bis {$moment} gesehen",
  "link/away-seen-up-to": "nicht da · hat alles bis {$moment} gesehen",
  "link/hub-takes-nothing": "{$hub} nimmt nichts an: {$why}",
  "link/hub-refused": "{$hub} nimmt nichts an: Zugang verweigert",
  "link/hub-got-nothing": "{$hub} hat noch nichts bekommen",
  "link/hub-got-all": "{$hub} hat alles bekommen",
  "link/hub-got-up-to": "{$hub} hat alles bis {$moment} bekommen",
  "link/waiting-to-be-sent": "{$count :integer} noch zu senden",
  "link/another-device": "Ein anderes Gerät",
  "link/overruled-done":
    "Ihre Markierung von Schritt {$number} „{$step}“ zählte nicht: {$who} hatte ihn vorher übersprungen. Öffnen Sie den Schritt, um das zu ändern.",
  "link/overruled-skip":
    "Ihr Überspringen von Schritt {$number} „{$step}“ zählte nicht: {$who} hatte ihn vorher als erledigt markiert. Öffnen Sie den Schritt, um das zu ändern.",
  "link/overruled-asked-again":
    "Ihre Markierung von Schritt {$number} „{$step}“ zählte nicht: Seine Entscheidung war wieder geöffnet worden. Wenn er erledigt wurde, öffnen Sie den Schritt und markieren ihn mit Grund als außer der Reihe erledigt.",
  "link/overruled-settled":
    "Schritt {$number}, {$step}: Was Sie entschieden haben, zählte nicht: {$who} hatte als Leitung gesagt, welches Ergebnis gilt. Fragen Sie die Leitung.",
  "link/overruled-dropped":
    "Ihre Markierung von Schritt {$number} „{$step}“ zählte nicht: {$who} hatte den Schritt aus dem Plan genommen.",
  "link/share-how":
    "Dieser Außeneinsatz ist nur auf diesem Gerät. Am Hub {#b}{$host}{/b} kann er von anderen Tablets aus begleitet und markiert werden; alles von hier wird weiterhin zuerst hier gespeichert.",
  "link/share-how-anywhere":
    "Dieser Außeneinsatz ist nur auf diesem Gerät. An einem Hub kann er von anderen Tablets aus begleitet und markiert werden; alles von hier wird weiterhin zuerst hier gespeichert.",
  "link/hub-address": "Adresse des Hubs",
  "link/hub-address-example": "zum Beispiel https://vehicle.local:4173",
  "link/hub-address-how":
    "Wie die Konsole des Hubs sie zeigt, beginnend mit https://, oder der ganze Link einer Einladung. Dieses Tablet muss dem Zertifikat des Hubs vertrauen.",
  "link/share-example": "zum Beispiel Boden",
  "link/owner-code": "Eigentümercode des Hubs",
  "link/owner-code-where": "Der Hub zeigt ihn beim Start auf seiner Konsole.",
  "link/share": "Außeneinsatz teilen",
  "link/no-walk-yet":
    "Das ist der Code des Hubs selbst, und der Hub hat noch keinen Außeneinsatz. Teilen Sie einen von dem Tablet aus, das ihn hat.",
  "link/which-walk": "Das ist der Code des Hubs selbst: Welchen Außeneinsatz leiten Sie?",
  "link/title-not-known": "Noch nicht bekannt",
  "link/walk-entries":
    ".input {$count :integer} .match $count one {{{$walk}, {$count} Eintrag}} * {{{$walk}, {$count} Einträge}}",
};
