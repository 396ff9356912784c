import type { helpOfJoinWords as english } from "../../english/screens/help-join.ts";
import type { Translated } from "../../translated.ts";

/** The help of joining a walk. */
export const helpOfJoinWords: Translated<typeof english> = {
  "guide/join": "Hilfe: einem Außeneinsatz beitreten",
  "guide/join-code":
    "Die Leitung erzeugt unter „Mehr“, „Verbindung und Begleiter“ einen Code. Er hat neun Buchstaben und Ziffern, gilt 15 Minuten und lässt so viele Tablets mit einer Rolle zu, wie die Leitung angegeben hat; ohne Angabe eines.",
  "guide/join-roles":
    "Die Leitung schließt auch den Außeneinsatz ab und lässt andere zu, die Protokollführung markiert Schritte und trägt Messwerte und Notizen ein, ein Beobachter liest nur.",
  "guide/join-owner":
    "Mit dem Eigentümercode des Hubs leitet man jeden seiner Außeneinsätze: Wählen Sie einen aus der Liste.",
  "guide/join-kept":
    "Ein Außeneinsatz, dem beigetreten wurde, ist auch auf diesem Gerät gespeichert und geht hier weiter, wenn die Verbindung abreißt.",
  "guide/join-expired":
    "Ein Code, der abgelaufen oder vertippt ist oder schon so viele Tablets zugelassen hat, wie er darf, lässt niemanden zu: Bitten Sie die Leitung um einen neuen. Nach mehreren falschen Codes lässt der Hub alle in diesem Netz einige Sekunden warten.",
  "guide/join-key":
    "Jedes Tablet hat einen Schlüssel, den niemand kopieren kann, und zeigt dem Hub, dass es ihn hat: Niemand sonst kann seinen Platz im Außeneinsatz einnehmen. Ohne TLS und in alten Browsern gibt es keinen; die Seite „Verbindung und Begleiter“ sagt es.",
  "guide/join-unreachable":
    "Wenn der Hub nicht antwortet, sehen Sie nach, ob dieses Gerät in seinem Netz ist und ob die Adresse die des Hubs ist.",
};
