import type { helpWords as english } from "../../english/command-line/help.ts";
import type { Translated } from "../../translated.ts";

/** The help of the command line. */
export const helpWords: Translated<typeof english> = {
  "help/program":
    "Préparer, suivre et examiner une sortie hors d’un véhicule. Ne fait que conseiller et s’en remet aux règles de vol.",
  "help/lang": "parler cette langue : en, fr, de, ja ou ar",
  "help/texts":
    "montrer les textes d’une procédure dans cette langue, par son étiquette, ou tels que l’auteur les a écrits : author",
  "help/units": "donner aussi les grandeurs dans ces unités : si ou us",
  "help/utc": "donner l’UTC avec la date ou le jour de l’année : plain ou day",
  "help/check": "dire ce qui ne va pas dans des procédures",
  "help/files": "fichiers de procédure",
  "help/file": "fichier de procédure",
  "help/json": "imprimer un seul document JSON",
  "help/mend": "imprimer le JSON Patch (RFC 6902) proposé pour le constat n de l’unique fichier",
  "help/watch": "vérifier de nouveau dès qu’un fichier change, jusqu’à l’arrêt",
  "help/plan": "planifier une procédure : heures, battement, attentes, chemin critique, risque",
  "help/start": "l’instant de PET 0",
  "help/orbit":
    "orbite (OMM ou éléments à deux lignes) pour la lumière du jour et l’obscurité ; exige --start",
  "help/decide": "l’issue d’une décision ; peut être donné plusieurs fois",
  "help/get-aheads": "planifier aussi toutes les tâches facultatives",
  "help/get-ahead": "planifier aussi cette tâche facultative ; peut être donné plusieurs fois",
  "help/samples": "tirer les durées autant de fois, pour le risque",
  "help/plan-seed": "la même graine donne le même risque",
  "help/fit":
    "dire quelles tâches facultatives tiennent sous une limite, pour une procédure ou une sortie en cours",
  "help/fit-file": "fichier de procédure, ou journal d’une sortie",
  "help/limit":
    "le PET auquel tout doit être fait, tel que PT6H ; celui de la procédure, sauf indication contraire",
  "help/chance":
    "la part minimale des tirages faits à ce moment, telle que 0.9 ; d’après les durées probables, sauf indication contraire",
  "help/fit-at": "pour un journal : demander à cet instant, d’après les entrées jusque-là",
  "help/leave-out": "une tâche dont plus rien n’est fait ; peut être donné plusieurs fois",
  "help/fit-samples": "tirer les durées autant de fois pour chaque ensemble proposé",
  "help/fit-seed": "la même graine donne la même réponse",
  "help/fit-tries": "examiner au plus autant d’ensembles",
  "help/split": "dire qui devrait faire quoi et dans quel ordre, pour la fin la plus proche",
  "help/split-tries": "établir au plus autant de répartitions",
  "help/split-proof": "chercher plus longtemps la preuve qu’aucune répartition n’est meilleure",
  "help/passes": "donner le jour, la nuit et le contact d’une orbite",
  "help/orbit-file": "OMM (JSON, KVN, XML) ou éléments à deux lignes",
  "help/from": "où commencer",
  "help/hours": "pour combien de temps",
  "help/contact-site":
    "une station au sol pour les fenêtres de contact, à la place de leurs heures dans le fichier ; exige --orbit, peut être donné plusieurs fois",
  "help/site": "une station au sol ; peut être donné plusieurs fois",
  "help/rehearse": "jouer une procédure avec des durées tirées au sort et écrire le journal",
  "help/rehearse-seed": "la même graine et le même début donnent le même journal",
  "help/rehearse-start": "l’instant de PET 0 ; maintenant, sauf indication contraire",
  "help/out": "écrire dans un fichier au lieu de la sortie standard",
  "help/pace": "écrire les entrées à mesure qu’elles surviennent, autant de fois plus vite que le temps réel",
  "help/brief": "écrire le briefing d’une procédure, ou d’une sortie réalisée, en un seul fichier HTML",
  "help/brief-html": "le fichier à écrire ; il se joue sans l’application et sans réseau",
  "help/rehearse-count":
    "jouer autant de répétitions, chacune avec la graine suivante ; --out est alors un dossier, avec un journal pour chacune",
  "help/rehearse-surprises":
    "un fichier d’imprévus, dont la graine tire ceux qui viennent ; le bilan de la sortie close les donne",
  "help/schema-fragment": "imprimer plutôt celui des fragments",
  "help/schema-surprises": "imprimer plutôt celui des fichiers d’imprévus",
  "help/learn":
    "dire ce que les sorties indiquent de la durée des étapes, et ce qui pourrait être planifié à la place",
  "help/walk-logs": "journaux de sorties d’une même procédure",
  "help/learn-procedure":
    "la procédure pour laquelle apprendre ; la dernière exécutée, sauf indication contraire",
  "help/renamed":
    "une étape qui a maintenant un autre identifiant, sous la forme ancien=nouveau ; peut être donné plusieurs fois",
  "help/walks": "placer côte à côte de nombreuses sorties d’une procédure",
  "help/versus": "les sorties d’un second groupe, auxquelles les autres sont comparées",
  "help/state": "montrer l’état qui résulte d’un journal",
  "help/log": "journal d’une sortie",
  "help/at": "l’état à un instant, d’après les entrées jusque-là",
  "help/review":
    "comparer ce qui a été fait au plan ; le document JSON et le journal d’événements disent si le journal a été vérifié, et ce qu’il en est résulté",
  "help/extract":
    "prendre quelques entrées d’un journal, à montrer à d’autres, chacune avec la preuve qu’un point de contrôle d’un hub la contenait",
  "help/extract-step": "les entrées sur cette étape ; peut être donné plusieurs fois",
  "help/extract-kind": "les entrées de ce genre, tel que step.done ; peut être donné plusieurs fois",
  "help/extract-out": "le fichier à écrire, tel que public.extract.jsonl",
  "help/plan-csv": "imprimer les étapes planifiées en CSV (RFC 4180)",
  "help/plan-xlsx":
    "écrire le plan en classeur (ECMA-376) avec une grille des étapes par équipage et par heure, et une liste",
  "help/verify":
    "dire si des entrées d’un journal ont été changées, ôtées, insérées ou réordonnées depuis qu’elles ont été faites ; un extrait est vérifié de même",
  "help/verify-log": "journal d’une sortie, ou extrait d’un journal",
  "help/verify-quick":
    "examiner un sceau par suite d’entrées, qui désigne celles d’avant, et non chaque sceau",
  "help/verify-trust": "la clé d’un hub de confiance ; peut être donné plusieurs fois",
  "help/verify-code": "un code oral lu ailleurs, à comparer",
  "help/csv": "imprimer les étapes en CSV (RFC 4180)",
  "help/xes": "imprimer un journal d’événements en XES (IEEE 1849)",
  "help/hub": "servir l’application, et garder d’accord les appareils qui suivent une sortie",
  "help/port": "le port où écouter ; 0 en prend un quelconque",
  "help/host": "où écouter : 0.0.0.0 pour tout le réseau, avec TLS",
  "help/data":
    "où le journal est conservé ; un dossier pour les données de cet utilisateur, sauf indication contraire",
  "help/cert": "certificat en PEM ; exige --key",
  "help/key": "sa clé privée en PEM",
  "help/hub-backup":
    "écrire le journal d’un hub dans un nouveau fichier unique ; le hub peut continuer de tourner",
  "help/hub-backup-to": "le fichier à écrire",
  "help/hub-restore":
    "rétablir une sauvegarde pendant que le hub est arrêté ; ce qui s’y trouve est mis de côté",
  "help/hub-restore-from": "la sauvegarde à rétablir",
  "help/engine": "un moteur que plusieurs hubs partagent : nats://host:port",
  "help/name": "le nom courant de ce hub ; celui de la machine, sauf indication contraire",
  "help/plain": "HTTP sans TLS, derrière un proxy qui assure TLS",
  "help/new-owner-code":
    "créer un autre code du propriétaire : l’ancien, et tous ceux qui sont dans une sortie, sont exclus et doivent rejoindre de nouveau",
  "help/upstream":
    "un autre hub à relier malgré une coupure ; #fingerprint à la suite fait confiance à ce certificat",
  "help/upstream-code":
    "le code du propriétaire de ce hub (toutes les sorties), ou une invitation comme relais (une seule)",
  "help/upstream-code-file":
    "un fichier avec ce code ; TETHERLINE_UPSTREAM_CODE dans l’environnement convient aussi",
  "help/engine-file":
    "un fichier avec l’adresse du moteur, si elle a un mot de passe ; TETHERLINE_ENGINE dans l’environnement convient aussi",
  "help/journal":
    "un fichier où noter en lignes JSON qui a rejoint, les codes faux, les retraits et les refus ; SIGHUP le rouvre",
  "help/hub-log": "un fichier où noter en lignes JSON ce que reçoit la console ; SIGHUP le rouvre",
  "help/also-as":
    "un autre nom sous lequel le hub est servi, tel que celui d’un proxy ; peut être donné plusieurs fois",
  "help/proxy":
    "l’adresse ou le réseau d’un proxy placé devant, cru sur qui il représente et sur l’usage de TLS (X-Forwarded-For, X-Forwarded-Proto) ; peut être donné plusieurs fois",
  "help/rate": "requêtes par minute qu’un appareil peut faire",
  "help/app": "l’application construite, sauf si elle est là où la construction la place",
  "help/schema": "imprimer le schéma JSON du fichier de procédure",
  "help/compare": "dire ce qui fait d’une procédure une autre, et ce que cela donne",
  "help/change": "faire des changements dans une procédure ; le reste de son texte reste tel quel",
  "help/changes": "JSON : une liste de changements, ou ce qu’imprime compare --json",
  "help/merge":
    "fusionner ce que deux révisions ont fait d’une même base ; code de sortie 1 quand toutes deux l’ont changée autrement",
  "help/merge-base": "la procédure dont toutes deux sont issues",
  "help/merge-ours": "une révision, dont le texte est gardé là où rien ne change",
  "help/merge-theirs": "l’autre révision",
  "help/merge-json": "imprimer un seul document JSON : la procédure fusionnée, ou les conflits",
  "help/version": "afficher la version du programme",
};
