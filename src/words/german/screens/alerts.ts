import type { alertWords as english } from "../../english/screens/alerts.ts";
import type { Translated } from "../../translated.ts";

/** What alerts say while a walk runs. They tell; they order nothing. */
export const alertWords: Translated<typeof english> = {
  "alert/turn-back-passed": "Die Umkehrzeit ist vorbei: Sie war um {$at :clock}, vor {$ago :length}",
  "alert/turn-back-near": "Die Umkehrzeit ist in {$time :length}, um {$at :clock}",
  "alert/return-barred": "{$crew :list}: Der Rückweg ist versperrt. {$why :message}",
  "alert/no-return": "{$crew :list}: Kein Rückweg zu einem Zufluchtsort passt mehr, oder keiner ist bekannt",
  "alert/no-forecast": "Keine Prognose möglich: Der Rest passt nicht mehr",
  "alert/over-limit": "Nach der Prognose dauert der Rest {$over :length} länger als das Zeitlimit",
  "alert/margin-small": "Nach der Prognose bleiben {$margin :length} bis zum Zeitlimit",
  "alert/redline": "{$crew}: {$supply} ist seit {$at :clock} am Mindeststand",
  "alert/redline-near": "{$crew}: {$supply} ist in {$time :length} am Mindeststand, um {$at :clock}",
  "alert/impossible-reading": "{$crew}: {$supply} zählt nicht wie abgelesen: {$why :message}",
  "alert/watch-due": "{$crew :list}: {$watch} (fällig seit {$due :clock})",
  "alert/hold": "Der Außeneinsatz ist seit {$since :clock} angehalten",
  "alert/hold-because": "Der Außeneinsatz ist seit {$since :clock} angehalten: {$reason}",
  "alert/decided-otherwise":
    "{$ask} {$outcome}; vorher war es {$was}, und auf diesem Zweig wurde nichts erledigt",
  "alert/decided-otherwise-after":
    "{$ask} {$outcome}; vorher war es {$was}, und auf diesem Zweig wurde erledigt: {$steps :list}",
  "alert/decided-contrary":
    "{$ask} Entscheidung durch {$who}: {$outcome}, sie zählt; durch {$other}: {$was}, und auf diesem Zweig wurde nichts erledigt. Die Leitung sagt, welches Ergebnis gilt",
  "alert/decided-contrary-after":
    "{$ask} Entscheidung durch {$who}: {$outcome}, sie zählt; durch {$other}: {$was}, und auf diesem Zweig wurde erledigt: {$steps :list}. Die Leitung sagt, welches Ergebnis gilt",
  "alert/asked-again":
    "{$ask} Dies ist wieder offen, und {$outcome} bleibt gültig, bis anders entschieden wird",
  "alert/item-elsewhere": "{$item} ist bei {$holders :list} und wird von {$crew :list} für {$step} gebraucht",
  "alert/overtime":
    "{$crew :list}: {$step} (seit {$time :length} in Arbeit, geplant waren höchstens {$high :length})",
};
