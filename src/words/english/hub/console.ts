/** What a hub tells its owner on the console: what it is, and what keeps it from running. */
export const hubConsoleWords = {
  "hub/own-mistake": "The hub met a mistake of its own: {$what}",
  "engine/silent-on-entry": "The store did not say what became of an entry.",
  "engine/disk-full": "The disk that holds {$place} is full: make room on it.",
  "engine/not-written": "{$place} may not be written: give the hub a data folder that it may write.",
  "engine/not-opened": "{$place} may not be opened: give the hub a data folder that it may write.",
  "engine/not-made": "{$place} cannot be made: give the hub a data folder that it may write.",
  "engine/not-in-folder": "{$place} is not in a folder: give the hub a data folder.",
  "engine/not-a-folder": "{$place} is not a folder: give the hub a data folder.",
  "engine/not-a-log": "{$place} is not a hub's log: bring it back from a backup, or move it away.",
  "engine/damaged": "{$place} is damaged: bring it back from a backup.",
  "engine/another-hub": "Another hub is using {$place}: stop it, or give this one a folder of its own.",
  "engine/disk-fails": "The disk that holds {$place} fails: look to the disk.",
  "engine/with-code": "{$what :message} ({$code})",
  "engine/foreign-stream":
    'The stream {$stream} at {$place} was not made by a hub (its {$key} is another): give "?name=" another name.',
  "engine/not-let-in": "The engine at {$place} does not let this hub in: look to the user and password.",
  "engine/not-kept": "The engine at {$place} does not keep it: {$why :message} ({$code}).",
  "engine/no-answer":
    "The engine at {$place} does not answer ({$why :message}): start nats-server with JetStream.",
  "engine/marker-damaged": "{$path} is damaged: bring it back from a backup, or delete it.",
  "engine/marker-about":
    "A hub keeps its log in this folder. Delete this file only to go on with whatever is here, or with nothing: all who follow will read everything again.",
  "engine/log-gone":
    "The hub's log was in {$folder}, but {$file} is gone or empty: bring it back from a backup, or delete {$marker} to go on without it.",
  "engine/left-wal":
    "{$file} was left by the log that was here before: it is set aside and not used. Delete it once nothing is missing.",
  "engine/not-proven":
    "{$file} is not provably the log that this hub had (it was copied, moved or brought back): all who follow read everything again and send what is missing.",
  "engine/backup-is-there": "{$file} is there already: give the backup another name.",
  "engine/no-backup-here":
    "The log is kept by the engine at {$place}: back it up with the tools of that engine.",
  "hub/full":
    "The hub has {$most :integer} connections, as many as it can hold: idle ones are closed for new ones, and others are told to come again.",
  "hub/journal-unusable": "The journal {$path} cannot be written: {$why :message}",
  "hub/another-past":
    "A follower was told of entries that this log does not hold: it was brought back from a copy. All who follow read everything again and send what is missing.",
  "backup/no-socket":
    '"hub backup" cannot reach this hub while it runs: {$path} cannot be listened at. Stop the hub for a backup, or give it a data folder with a shorter name.',
  "backup/no-answer": "The hub that runs gave no answer about the backup: try again.",
  "backup/nothing-there": "There is no hub's log in {$folder}: name its data folder with --data.",
  "engine/rights-mended": "Others could read or write in {$folder}: its files are for this user alone again.",
  "engine/folder-open":
    "Others may write in {$folder}, which is not the hub's alone: give the hub a data folder of its own.",
  "engine/secrets-about":
    "Secrets of a hub: the owner's code, keys that sign, and tokens of other hubs. Whoever has this file can do everything. Without it all have to join again.",
  "engine/secrets-damaged":
    "{$path} is damaged: bring it back from a backup, or delete it, and all have to join again.",
  "engine/secrets-gone":
    "The file with the hub's secrets (hub-secrets.json) is not here: the owner's code is another one, and all have to join again.",
  "engine/single-server":
    'The engine keeps one copy of everything and confirms entries before they are on its disk: a power cut may lose the last two minutes. Set "sync_interval: always" in its configuration (nats-server 2.10 or later), or ask for "?replicas=3".',
  "engine/no-sqlite": 'SQLite cannot be used here ({$why}): run "npm ci".',
  "engine/other-file": "{$file} is not a hub's log: move it away, or give the hub another data folder.",
  "engine/unsound": "{$file} is damaged: bring it back from a backup. ({$found}, {$unsound})",
  "engine/newer-version":
    "{$file} was written by a newer version of this program (format {$version :integer}, not {$known :integer}): use that one.",
  "engine/other-version":
    "{$file} was written by another version of this program (format {$version :integer}, not {$known :integer}): use that one.",
  "engine/file-closed": "{$file} is closed: the hub is ending.",
  "engine/slow-to-tell": "The engine is slow to tell what it has: try again.",
  "engine/slow-to-read": "The engine is slow to read what it has: try again.",
  "engine/closed": "The engine is closed: the hub is ending.",
  "engine/address-not-understood":
    "The engine's address is not understood: give nats://host:port, or leave it out.",
  "engine/address-has-unknown": 'The engine\'s address has "{$what}", which is not known.',
  "engine/bad-replicas": "The engine's address asks for replicas other than 1, 3 or 5.",
  "engine/bad-name": "The engine's name may have up to 32 letters, digits, - and _.",
  "engine/unreadable-file": "The engine's address names {$path}, which cannot be read.",
  "engine/gives-nothing-back": "The store does not give back what was just kept in it.",
  "hub/certificate-unreadable": '"{$file}" cannot be read.',
  "hub/not-a-certificate": '"{$certificate}" and "{$key}" are not a certificate and its key, both in PEM.',
  "hub/folder-unusable": "{$folder} cannot be used ({$code}): give the hub a data folder that it may write.",
  "hub/presence-not-told": "Who follows the walk could not be told: {$why :message}",
  "hub/cert-and-key": "Give a certificate and its key: --cert and --key go together.",
  "hub/plain-or-cert": "Either --plain or --cert: a plain hub shows no certificate.",
  "hub/upstream-and-code": "Give the other hub's address and a code of it: --upstream and --upstream-code.",
  "hub/upstream-not-understood":
    "The other hub's address is not understood: give https://host:port, with #fingerprint if need be.",
  "hub/no-host": "Give a host to listen at, or leave --host out.",
  "hub/kept-in": 'Tetherline hub "{$name}", log kept in {$place}.',
  "hub/no-app": "No built app in {$folder}: only the interface is served.",
  "hub/plain": "Plain HTTP: put a proxy with TLS in front, else codes and tokens can be read on the way.",
  "hub/certificate": "Certificate, SHA-256: {$fingerprint}",
  "hub/authority": "Made by this hub's own authority, SHA-256: {$fingerprint}",
  "hub/to-trust": "A tablet trusts it once it has installed /tetherline-hub.crt from the address below.",
  "hub/owner-code": "Owner's code: {$code}",
  "hub/key-code": "Key code, by which this hub's logs are verified: {$key}",
  "hub/witness-trouble": "What this hub writes into a log of itself could not be written: {$why :message}",
  "hub/how-to-stop": "Stop the hub with Ctrl+C. Open:",
  "hub/port-in-use": "Port {$port :integer} is in use: stop what uses it, or give another with --port.",
  "hub/port-or-folder-denied":
    'Port {$port :integer} or the data folder "{$folder}" may not be used: give others with --port and --data.',
  "hub/not-this-machine": '"{$host}" is no address of this machine: give one of its own with --host.',
  "hub/data-not-a-folder": 'The data folder "{$folder}" is not a folder: give another with --data.',
  "hub/data-not-in-folder": 'The data folder "{$folder}" is not in a folder: give another with --data.',
  "hub/data-not-made": 'The data folder "{$folder}" cannot be made: give another with --data.',
  "hub/data-denied": 'The data folder "{$folder}" may not be used: give another with --data.',
  "hub/data-not-written": 'The data folder "{$folder}" may not be written: give another with --data.',
  "hub/data-disk-full": 'The disk of the data folder "{$folder}" is full: make room on it.',
  "hub/authority-name": "Tetherline hub {$name}",
  "hub/metric-entries": "Entries offered, by what became of them",
  "hub/metric-append": "From a batch being judged to its being durable",
  "hub/metric-links": "Links of walks with other hubs, by their state.",
  "hub/metric-unsent": "Entries that wait to be sent to other hubs.",
  "hub/metric-lag":
    "Age of the first entry that the furthest behind of the other hubs lacks, in seconds; infinite where one has nothing yet.",
  "hub/metric-hub-lag": "The same for each hub that this one is linked with.",
  "hub/metric-hub-unsent": "Entries that wait to be sent to each hub that this one is linked with.",
  "hub/metric-disk": "Disk that the log is on: what is free of it, and its size, in bytes.",
  "hub/metric-queue": "Batches that are being made durable at this moment.",
  "hub/metric-refused": "Requests that were not done, by the status of the answer.",
  "hub/metric-followers": "Event streams open on this hub",
  "hub/metric-memory": "Resident memory of this hub",
} as const;
