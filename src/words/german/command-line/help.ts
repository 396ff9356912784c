import type { helpWords as english } from "../../english/command-line/help.ts";
import type { Translated } from "../../translated.ts";

/** The help of the command line. */
export const helpWords: Translated<typeof english> = {
  "help/program":
    "Einen Außeneinsatz an einem Fahrzeug vorbereiten, begleiten und auswerten. Das Programm berät nur; Flugregeln gehen vor.",
  "help/lang": "in dieser Sprache: en, fr, de, ja oder ar",
  "help/texts":
    "Texte einer Prozedur in dieser Sprache zeigen, nach ihrem Kürzel, oder wie vom Verfasser geschrieben: author",
  "help/units": "Größen auch in diesen Einheiten zeigen: si oder us",
  "help/utc": "UTC mit Datum oder Tag des Jahres nennen: plain oder day",
  "help/check": "sagen, was an Prozeduren nicht stimmt",
  "help/files": "Dateien von Prozeduren",
  "help/file": "Datei einer Prozedur",
  "help/json": "ein JSON-Dokument ausgeben",
  "help/mend": "den JSON Patch (RFC 6902) ausgeben, der für Befund n der einen Datei vorgeschlagen wird",
  "help/watch": "noch einmal prüfen, wenn sich eine Datei ändert, bis zum Beenden",
  "help/plan": "eine Prozedur planen: Zeiten, Pufferzeit, Warten, kritischer Pfad, Risiko",
  "help/start": "der Zeitpunkt von PET 0",
  "help/orbit":
    "Umlaufbahn (OMM oder zweizeilige Bahnelemente) für Tageslicht und Dunkelheit; braucht --start",
  "help/decide": "Ergebnis einer Entscheidung; kann mehrmals angegeben werden",
  "help/get-aheads": "auch alle Zusatzaufgaben planen",
  "help/get-ahead": "auch diese Zusatzaufgabe planen; kann beliebig oft angegeben werden",
  "help/samples": "Dauern so viele Male als Stichproben ziehen, für das Risiko",
  "help/plan-seed": "derselbe Startwert ergibt dasselbe Risiko",
  "help/fit":
    "sagen, welche Zusatzaufgaben unter ein Zeitlimit passen, für eine Prozedur oder einen laufenden Außeneinsatz",
  "help/fit-file": "Datei einer Prozedur oder Protokoll eines Außeneinsatzes",
  "help/limit": "die PET, bis zu der alles erledigt sein soll, etwa PT6H; ohne Angabe die der Prozedur",
  "help/chance":
    "der kleinste Anteil der Stichproben, die bis dahin erledigt sein sollen, etwa 0.9; ohne Angabe nach wahrscheinlichen Zeiten",
  "help/fit-at": "für ein Protokoll: zu diesem Zeitpunkt fragen, aus den Einträgen bis dahin",
  "help/leave-out": "eine Aufgabe, von der nichts mehr ausgeführt wird; kann mehrmals angegeben werden",
  "help/fit-samples": "Dauern so viele Male als Stichproben ziehen, für jede angebotene Auswahl",
  "help/fit-seed": "derselbe Startwert ergibt dieselbe Antwort",
  "help/fit-tries": "höchstens so viele Auswahlen betrachten",
  "help/split": "sagen, wer was in welcher Reihenfolge tun sollte, damit das Ende am frühesten kommt",
  "help/split-tries": "höchstens so viele Aufteilungen planen",
  "help/split-proof": "länger nach einem Beweis suchen, dass keine Aufteilung besser ist",
  "help/passes": "Tag, Nacht und Kontakt einer Umlaufbahn nennen",
  "help/orbit-file": "OMM (JSON, KVN, XML) oder zweizeilige Bahnelemente",
  "help/from": "von wann an",
  "help/hours": "wie lange",
  "help/contact-site":
    "ein Bodenstandort für Zeitfenster mit Kontakt, anstelle ihrer Zeiten in der Datei; braucht --orbit, kann mehrmals angegeben werden",
  "help/site": "ein Bodenstandort; kann mehrmals angegeben werden",
  "help/rehearse": "eine Prozedur mit Dauern aus Stichproben durchspielen und das Protokoll schreiben",
  "help/rehearse-seed": "derselbe Startwert und Beginn ergeben dasselbe Protokoll",
  "help/rehearse-start": "der Zeitpunkt von PET 0; ohne Angabe jetzt",
  "help/out": "in eine Datei schreiben statt auf die Standardausgabe",
  "help/pace": "Einträge schreiben, wie sie geschehen, so viele Male schneller als in Wirklichkeit",
  "help/brief":
    "das Briefing einer Prozedur oder eines Außeneinsatzes, wie ausgeführt, als eine HTML-Datei schreiben",
  "help/brief-html": "die zu schreibende Datei; sie läuft ohne die App und ohne Netz",
  "help/rehearse-count":
    "so viele Proben durchspielen, jede mit dem nächsten Startwert; --out ist dann ein Ordner mit einem Protokoll für jede",
  "help/rehearse-surprises":
    "eine Datei mit Überraschungen; der Startwert bestimmt, welche davon kommen; die Auswertung des abgeschlossenen Außeneinsatzes nennt sie",
  "help/schema-fragment": "stattdessen das von Bausteinen ausgeben",
  "help/schema-surprises": "stattdessen das von Dateien mit Überraschungen ausgeben",
  "help/learn":
    "sagen, was Außeneinsätze über die Dauer von Schritten sagen und was stattdessen geplant werden könnte",
  "help/walk-logs": "Protokolle von Außeneinsätzen einer Prozedur",
  "help/learn-procedure": "die Prozedur, für die gelernt wird; ohne Angabe die zuletzt ausgeführte",
  "help/renamed": "ein Schritt, der jetzt eine andere id hat, als alt=neu; kann mehrmals angegeben werden",
  "help/walks": "viele Außeneinsätze einer Prozedur nebeneinanderlegen",
  "help/versus": "die Außeneinsätze einer zweiten Gruppe, mit der die anderen verglichen werden",
  "help/state": "den Stand zeigen, den ein Protokoll ergibt",
  "help/log": "Protokoll eines Außeneinsatzes",
  "help/at": "der Stand zu einem Zeitpunkt, aus den Einträgen bis dahin",
  "help/review":
    "vergleichen, was ausgeführt wurde und was geplant war; das JSON-Dokument und das Ereignisprotokoll sagen, ob das Protokoll nachgeprüft wurde und mit welchem Urteil",
  "help/extract":
    "einige Einträge aus einem Protokoll nehmen, um sie anderen zu zeigen, jeder mit dem Beweis, dass ein Prüfpunkt eines Hubs ihn enthielt",
  "help/extract-step": "die Einträge zu diesem Schritt; kann mehrmals angegeben werden",
  "help/extract-kind": "die Einträge dieser Art, etwa step.done; kann mehrmals angegeben werden",
  "help/extract-out": "die zu schreibende Datei, etwa public.extract.jsonl",
  "help/plan-csv": "die geplanten Schritte als CSV ausgeben (RFC 4180)",
  "help/plan-xlsx":
    "den Plan als Arbeitsmappe (ECMA-376) schreiben, mit einem Raster der Schritte nach Crew und Zeit und einer Liste",
  "help/verify":
    "sagen, ob Einträge eines Protokolls seit ihrer Entstehung geändert, herausgenommen, eingefügt oder umgeordnet wurden; auch ein Auszug wird nachgeprüft",
  "help/verify-log": "Protokoll eines Außeneinsatzes oder ein Auszug davon",
  "help/verify-quick": "je Folge von Einträgen ein Siegel betrachten, das die davor nennt, und nicht jedes",
  "help/verify-trust": "der Schlüssel eines Hubs, dem vertraut wird; kann beliebig oft angegeben werden",
  "help/verify-code": "ein anderswo vorgelesener Sprechcode zum Vergleich",
  "help/csv": "die Schritte als CSV ausgeben (RFC 4180)",
  "help/xes": "ein Ereignisprotokoll in XES ausgeben (IEEE 1849)",
  "help/hub": "die App anbieten und die Geräte, die einen Außeneinsatz begleiten, auf demselben Stand halten",
  "help/port": "der Port, auf dem gelauscht wird; 0 nimmt irgendeinen",
  "help/host": "wo gelauscht wird: 0.0.0.0 für das ganze Netz, mit TLS",
  "help/data": "wo das Protokoll liegt; ohne Angabe ein Ordner für die Daten dieses Benutzers",
  "help/cert": "Zertifikat in PEM; braucht --key",
  "help/key": "sein privater Schlüssel in PEM",
  "help/hub-backup": "das Protokoll eines Hubs in eine neue Datei schreiben; der Hub darf weiterlaufen",
  "help/hub-backup-to": "die zu schreibende Datei",
  "help/hub-restore":
    "eine Sicherung zurückholen, während der Hub beendet ist; was da ist, wird beiseitegelegt",
  "help/hub-restore-from": "die Sicherung, die zurückgeholt wird",
  "help/engine": "eine Engine, die mehrere Hubs teilen: nats://host:port",
  "help/name": "wie dieser Hub genannt wird; ohne Angabe der Name des Rechners",
  "help/plain": "reines HTTP, für einen Proxy davor, der TLS übernimmt",
  "help/new-owner-code":
    "einen neuen Eigentümercode erzeugen: Der alte und alle, die in einem Außeneinsatz sind, sind ausgeschlossen und müssen neu beitreten",
  "help/upstream":
    "ein anderer Hub auf der Gegenseite einer Strecke, mit dem dieser verbunden wird; #fingerprint dahinter vertraut diesem Zertifikat",
  "help/upstream-code":
    "der Eigentümercode jenes Hubs (alle Außeneinsätze) oder eine Einladung als Relais (einer)",
  "help/upstream-code-file": "eine Datei mit diesem Code; TETHERLINE_UPSTREAM_CODE in der Umgebung geht auch",
  "help/engine-file":
    "eine Datei mit der Adresse der Engine, wo sie ein Passwort hat; TETHERLINE_ENGINE in der Umgebung geht auch",
  "help/journal":
    "eine Datei, in die als JSON-Zeilen geschrieben wird, wer beitrat, falsche Codes, Rücknahmen und Ablehnungen; SIGHUP öffnet sie neu",
  "help/hub-log":
    "eine Datei, in die als JSON-Zeilen geschrieben wird, was die Konsole meldet; SIGHUP öffnet sie neu",
  "help/also-as":
    "ein weiterer Name, unter dem der Hub angeboten wird, etwa der eines Proxys; kann mehrmals angegeben werden",
  "help/proxy":
    "die Adresse oder das Netz eines Proxys davor, dem geglaubt wird, für wen er fragt und ob über TLS (X-Forwarded-For, X-Forwarded-Proto); kann mehrmals angegeben werden",
  "help/rate": "Anfragen je Minute, die ein Gerät stellen darf",
  "help/app": "die gebaute App, wenn sie nicht ist, wo der Build sie ablegt",
  "help/schema": "das JSON Schema der Prozedurdatei ausgeben",
  "help/compare": "sagen, was aus der einen Prozedur die andere macht und was das ergibt",
  "help/change": "Änderungen an einer Prozedur vornehmen; der Rest ihres Textes bleibt, wie er ist",
  "help/changes": "JSON: eine Liste von Änderungen, oder was compare --json ausgibt",
  "help/merge":
    "zusammenführen, was zwei Revisionen aus einer Grundlage gemacht haben; Exit-Status 1, wenn beide aus etwas Verschiedenes gemacht haben",
  "help/merge-base": "die Prozedur, aus der beide entstanden sind",
  "help/merge-ours": "die eine Revision, deren Text bleibt, wo sich nichts ändert",
  "help/merge-theirs": "die andere Revision",
  "help/merge-json": "ein JSON-Dokument ausgeben: die zusammengeführte Prozedur oder die Konflikte",
  "help/version": "die Version des Programms ausgeben",
};
