import type { helpOfMapWords as english } from "../../english/screens/help-map.ts";
import type { Translated } from "../../translated.ts";

/** The help of the map. */
export const helpOfMapWords: Translated<typeof english> = {
  "guide/map": "Hilfe: die Karte",
  "guide/map-places":
    "Ein Ring ist ein Ort, ein Ring in einem Rahmen ein Zufluchtsort. Das Kästchen darunter zählt die Gegenstände dort samt dem, was in ihnen verpackt ist.",
  "guide/map-people":
    "Eine gefüllte Scheibe ist ein Crewmitglied, mit einer Karte, die sagt, was es tut. Ihr Rand hat Strichelung und Farbton seines Strangs und ist gewellt, solange es wartet.",
  "guide/map-lines":
    "Eine Leine läuft von ihrem Anschlagpunkt über die Wege, die gegangen wurden. Sie hängt in Wellen, solange ihr Crewmitglied wartet, und ist dick gezeichnet, wo sie zu kurz ist.",
  "guide/map-shared": "Eine Raute auf einem Weg: Die Leinen mehrerer Personen laufen darüber.",
  "guide/map-home":
    "Punkte führen von der Person außen, die am weitesten von einem Zufluchtsort entfernt ist, zum nächsten. Die Karte dieser Person sagt, wie viele Meter das auf den Wegen sind, gleich welche Zustände sie brauchen.",
  "guide/map-light":
    "Der Grund ist bei Nacht dunkler, und am Fuß der Karte steht Tag oder Nacht, wo es bekannt ist.",
  "guide/map-ask":
    "Tippen Sie auf einen Ort oder eine Personenkarte, oder wählen Sie aus der Liste unter der Karte, um alles zu lesen, was darüber bekannt ist; ein Gegenstand an einem Ort oder bei einer Person lässt sich ebenfalls antippen.",
  "guide/map-move":
    "Ziehen, mit zwei Fingern zoomen, nach einem Tippen auf die Karte das Mausrad drehen, die Schaltflächen benutzen, oder mit der Tastatur die Pfeile, Plus, Minus und 0 für das Ganze.",
  "guide/map-moment":
    "Während ein Außeneinsatz begleitet wird, zeigt die Karte jetzt. Auf einer Zeitleiste und in einer Auswertung zeigt sie den Zeitpunkt, der berührt wurde oder am Schieberegler eingestellt ist.",
  "guide/map-positions":
    "Lagen sind die der Datei, in Metern: nach rechts, auf der Seite nach oben, und Höhe in der Ansicht von der Seite. Der Maßstab gilt für beide Ansichten.",
  "guide/map-where":
    "Wo jemand ist, folgt aus den Schritten: am Ort des letzten, oder auf dem Weg nach dem Anteil der vergangenen Zeit. Niemandes Lage wird gemessen.",
  "guide/map-left":
    "Was von einer Leine übrig ist, ist ihre Länge weniger dem, was auf den Wegen ausliegt, nie aufgerundet. Durchhang und Knoten zählen nicht.",
  "guide/map-sketch":
    "Skizze, nicht maßstäblich: Orte ohne Lage wurden nach den Längen der Wege angeordnet, oder Lagen und Längen widersprechen sich. Abstände darauf sagen nichts; die Längen in der Liste gelten.",
  "guide/map-crowded":
    "Eine Nummer steht für einen Namen, der keinen Platz hat; die Liste unter der Karte hat den Namen. Vergrößern Sie die Karte, um ihn an seinem Ort zu lesen.",
};
