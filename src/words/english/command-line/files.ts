/** Why a file on a machine cannot be read or written. */
export const filesWords = {
  "file/standard-input": "standard input",
  "file/not-read": '"{$file :message}" cannot be read: {$why :message}.',
  "file/not-written": '"{$file :message}" cannot be written: {$why :message}.',
  "file/not-there": "there is no such file",
  "file/is-directory": "it is a directory, not a file",
  "file/not-this-user": "this user may not open it",
  "file/read-only": "the disk is read-only",
  "file/disk-full": "the disk is full",
  "file/system-reports": "the system reports {$code}",
  "file/system-error": "the system reports an error",
  "file/not-utf-8": "it is not text in UTF-8",
  "file/larger-than-mebibytes": "it is larger than {$most :number} MiB",
  "file/larger-than-bytes": "it is larger than {$most :integer} bytes",
  "cli/no-texts":
    "The procedure has no texts in “{$tag}”: {$languages :list} are there, and “author” for those as written.",
  "cli/no-texts-but-author": "The procedure has no texts in “{$tag}”, and none but its author’s.",
} as const;
