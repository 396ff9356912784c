import type { hubConsoleWords as english } from "../../english/hub/console.ts";
import type { Translated } from "../../translated.ts";

/** What a hub tells its owner on the console: what it is, and what keeps it from running. */
export const hubConsoleWords: Translated<typeof english> = {
  "hub/own-mistake": "Le hub a rencontré une erreur interne : {$what}",
  "engine/silent-on-entry": "Le stockage n’a pas dit ce qu’une entrée est devenue.",
  "engine/disk-full": "Le disque qui contient {$place} est plein : faites-y de la place.",
  "engine/not-written":
    "{$place} ne peut pas être écrit : donnez au hub un dossier de données où il peut écrire.",
  "engine/not-opened":
    "{$place} ne peut pas être ouvert : donnez au hub un dossier de données où il peut écrire.",
  "engine/not-made":
    "{$place} ne peut pas être créé : donnez au hub un dossier de données où il peut écrire.",
  "engine/not-in-folder": "{$place} n’est pas dans un dossier : donnez au hub un dossier de données.",
  "engine/not-a-folder": "{$place} n’est pas un dossier : donnez au hub un dossier de données.",
  "engine/not-a-log":
    "{$place} n’est pas le journal d’un hub : rétablissez-le depuis une sauvegarde, ou déplacez-le ailleurs.",
  "engine/damaged": "{$place} est endommagé : rétablissez-le depuis une sauvegarde.",
  "engine/another-hub": "Un autre hub utilise {$place} : arrêtez-le, ou donnez à celui-ci un dossier à lui.",
  "engine/disk-fails": "Le disque qui contient {$place} est défaillant : examinez le disque.",
  "engine/with-code": "{$what :message} ({$code})",
  "engine/foreign-stream":
    "Le flux {$stream} à {$place} n’a pas été créé par un hub (sa valeur {$key} est autre) : donnez un autre nom avec « ?name= ».",
  "engine/not-let-in": "Le moteur à {$place} n’admet pas ce hub : vérifiez l’utilisateur et le mot de passe.",
  "engine/not-kept": "Le moteur à {$place} ne le conserve pas : {$why :message} ({$code}).",
  "engine/no-answer":
    "Le moteur à {$place} ne répond pas ({$why :message}) : démarrez nats-server avec JetStream.",
  "engine/marker-damaged": "{$path} est endommagé : rétablissez-le depuis une sauvegarde, ou supprimez-le.",
  "engine/marker-about":
    "Un hub conserve son journal dans ce dossier. Ne supprimez ce fichier que pour continuer avec ce qui est ici, ou avec rien : tous ceux qui suivent reliront tout.",
  "engine/log-gone":
    "Le journal du hub était dans {$folder}, mais {$file} a disparu ou est vide : rétablissez-le depuis une sauvegarde, ou supprimez {$marker} pour continuer sans lui.",
  "engine/left-wal":
    "{$file} a été laissé par le journal qui était ici auparavant : il est mis de côté et n’est pas utilisé. Supprimez-le quand rien ne manque.",
  "engine/not-proven":
    "Rien ne prouve que {$file} est le journal que ce hub avait (il a été copié, déplacé ou rétabli) : tous ceux qui suivent relisent tout et envoient ce qui manque.",
  "engine/backup-is-there": "{$file} existe déjà : donnez un autre nom à la sauvegarde.",
  "engine/no-backup-here":
    "Le journal est conservé par le moteur à {$place} : sauvegardez-le avec les outils de ce moteur.",
  "hub/full":
    "Le hub a {$most :integer} connexions, autant qu’il peut en tenir : celles qui sont inactives sont fermées au profit de nouvelles, et les autres sont priées de revenir.",
  "hub/journal-unusable": "Le fichier de suivi {$path} ne peut pas être écrit : {$why :message}",
  "hub/another-past":
    "Un participant a reçu des entrées que ce journal ne contient pas : il a été rétabli depuis une copie. Tous ceux qui suivent relisent tout et envoient ce qui manque.",
  "backup/no-socket":
    "« hub backup » ne peut pas joindre ce hub pendant qu’il tourne : impossible d’écouter à {$path}. Arrêtez le hub pour une sauvegarde, ou donnez-lui un dossier de données au nom plus court.",
  "backup/no-answer": "Le hub en marche n’a pas répondu au sujet de la sauvegarde : réessayez.",
  "backup/nothing-there":
    "Il n’y a pas de journal de hub dans {$folder} : nommez son dossier de données avec --data.",
  "engine/rights-mended":
    "D’autres pouvaient lire ou écrire dans {$folder} : ses fichiers sont de nouveau à cet utilisateur seul.",
  "engine/folder-open":
    "D’autres peuvent écrire dans {$folder}, qui n’est pas au hub seul : donnez au hub un dossier de données à lui.",
  "engine/secrets-about":
    "Secrets d’un hub : le code du propriétaire, des clés qui signent et des jetons d’autres hubs. Qui a ce fichier peut tout faire. Sans lui, tous doivent rejoindre de nouveau.",
  "engine/secrets-damaged":
    "{$path} est endommagé : rétablissez-le depuis une sauvegarde, ou supprimez-le, et tous devront rejoindre de nouveau.",
  "engine/secrets-gone":
    "Le fichier des secrets du hub (hub-secrets.json) n’est pas ici : le code du propriétaire est un autre, et tous doivent rejoindre de nouveau.",
  "engine/single-server":
    "Le moteur ne conserve qu’une copie de tout et confirme des entrées avant qu’elles soient sur son disque : une coupure de courant peut perdre les deux dernières minutes. Mettez « sync_interval: always » dans sa configuration (nats-server 2.10 ou plus récent), ou demandez « ?replicas=3 ».",
  "engine/no-sqlite": "SQLite ne peut pas être utilisé ici ({$why}) : exécutez « npm ci ».",
  "engine/other-file":
    "{$file} n’est pas le journal d’un hub : déplacez-le ailleurs, ou donnez au hub un autre dossier de données.",
  "engine/unsound": "{$file} est endommagé : rétablissez-le depuis une sauvegarde. ({$found}, {$unsound})",
  "engine/newer-version":
    "{$file} a été écrit par une version plus récente de ce programme (format {$version :integer}, et non {$known :integer}) : utilisez celle-là.",
  "engine/other-version":
    "{$file} a été écrit par une autre version de ce programme (format {$version :integer}, et non {$known :integer}) : utilisez celle-là.",
  "engine/file-closed": "{$file} est fermé : le hub s’arrête.",
  "engine/slow-to-tell": "Le moteur tarde à dire ce qu’il a : réessayez.",
  "engine/slow-to-read": "Le moteur tarde à lire ce qu’il a : réessayez.",
  "engine/closed": "Le moteur est fermé : le hub s’arrête.",
  "engine/address-not-understood":
    "L’adresse du moteur n’est pas comprise : donnez nats://host:port, ou laissez-la de côté.",
  "engine/address-has-unknown": "L’adresse du moteur contient « {$what} », qui n’est pas connu.",
  "engine/bad-replicas": "L’adresse du moteur demande un nombre de replicas autre que 1, 3 ou 5.",
  "engine/bad-name": "Le nom du moteur peut avoir jusqu’à 32 lettres, chiffres, - et _.",
  "engine/unreadable-file": "L’adresse du moteur nomme {$path}, qui ne peut pas être lu.",
  "engine/gives-nothing-back": "Le stockage ne rend pas ce qui vient d’y être conservé.",
  "hub/certificate-unreadable": "« {$file} » ne peut pas être lu.",
  "hub/not-a-certificate":
    "« {$certificate} » et « {$key} » ne sont pas un certificat et sa clé, tous deux en PEM.",
  "hub/folder-unusable":
    "{$folder} ne peut pas être utilisé ({$code}) : donnez au hub un dossier de données où il peut écrire.",
  "hub/presence-not-told": "Impossible de dire qui suit la sortie : {$why :message}",
  "hub/cert-and-key": "Donnez un certificat et sa clé : --cert et --key vont ensemble.",
  "hub/plain-or-cert": "Soit --plain, soit --cert : un hub sans TLS ne montre pas de certificat.",
  "hub/upstream-and-code":
    "Donnez l’adresse de l’autre hub et un code de celui-ci : --upstream et --upstream-code.",
  "hub/upstream-not-understood":
    "L’adresse de l’autre hub n’est pas comprise : donnez https://host:port, avec #fingerprint au besoin.",
  "hub/no-host": "Donnez un hôte où écouter, ou laissez --host de côté.",
  "hub/kept-in": "Hub Tetherline « {$name} », journal conservé dans {$place}.",
  "hub/no-app": "Aucune application construite dans {$folder} : seule l’interface est servie.",
  "hub/plain":
    "HTTP sans TLS : placez un proxy avec TLS devant, sinon les codes et les jetons peuvent être lus en chemin.",
  "hub/certificate": "Certificat, SHA-256 : {$fingerprint}",
  "hub/authority": "Émis par l’autorité propre de ce hub, SHA-256 : {$fingerprint}",
  "hub/to-trust":
    "Une tablette lui fait confiance une fois /tetherline-hub.crt installé depuis l’adresse ci-dessous.",
  "hub/owner-code": "Code du propriétaire : {$code}",
  "hub/key-code": "Code de clé, avec lequel les journaux de ce hub sont vérifiés : {$key}",
  "hub/witness-trouble":
    "Ce que ce hub écrit de lui-même dans un journal n’a pas pu être écrit : {$why :message}",
  "hub/how-to-stop": "Arrêtez le hub avec Ctrl+C. Ouvrez :",
  "hub/port-in-use":
    "Le port {$port :integer} est occupé : arrêtez ce qui l’utilise, ou donnez-en un autre avec --port.",
  "hub/port-or-folder-denied":
    "Le port {$port :integer} ou le dossier de données « {$folder} » ne peut pas être utilisé : donnez-en d’autres avec --port et --data.",
  "hub/not-this-machine": "« {$host} » n’est pas une adresse de cette machine : donnez-en une avec --host.",
  "hub/data-not-a-folder":
    "Le dossier de données « {$folder} » n’est pas un dossier : donnez-en un autre avec --data.",
  "hub/data-not-in-folder":
    "Le dossier de données « {$folder} » n’est pas dans un dossier : donnez-en un autre avec --data.",
  "hub/data-not-made":
    "Le dossier de données « {$folder} » ne peut pas être créé : donnez-en un autre avec --data.",
  "hub/data-denied":
    "Le dossier de données « {$folder} » ne peut pas être utilisé : donnez-en un autre avec --data.",
  "hub/data-not-written":
    "Le dossier de données « {$folder} » ne peut pas être écrit : donnez-en un autre avec --data.",
  "hub/data-disk-full": "Le disque du dossier de données « {$folder} » est plein : faites-y de la place.",
  "hub/authority-name": "Hub Tetherline {$name}",
  "hub/metric-entries": "Entrées proposées, selon ce qu’elles sont devenues",
  "hub/metric-append": "Du jugement d’un lot à son enregistrement durable",
  "hub/metric-links": "Liaisons de sorties avec d’autres hubs, selon leur état.",
  "hub/metric-unsent": "Entrées en attente d’envoi à d’autres hubs.",
  "hub/metric-lag":
    "Âge de la première entrée qui manque au plus en retard des autres hubs, en secondes ; infini quand l’un d’eux n’a encore rien.",
  "hub/metric-hub-lag": "La même chose pour chaque hub auquel celui-ci est relié.",
  "hub/metric-hub-unsent": "Entrées en attente d’envoi à chaque hub auquel celui-ci est relié.",
  "hub/metric-disk": "Disque où se trouve le journal : l’espace libre et la taille, en octets.",
  "hub/metric-queue": "Lots en cours d’enregistrement durable à ce moment.",
  "hub/metric-refused": "Requêtes non exécutées, selon le code d’état de la réponse.",
  "hub/metric-followers": "Flux d’événements ouverts sur ce hub",
  "hub/metric-memory": "Mémoire résidente de ce hub",
};
