/** The help of the shelf. */
export const helpOfShelfWords = {
  "guide/shelf": "Help: the shelf",
  "guide/shelf-first":
    "“Open the practice walk” opens the practice walk, with a guide beside it; it is offered while there is no walk on this device. Later, “Rehearse” at the same procedure opens another one.",
  "guide/shelf-walk":
    "A walk is one performance of a procedure, or a rehearsal of one. The running one comes first; “Go on” opens it where it was.",
  "guide/shelf-follow":
    "“Follow” opens a walk of a procedure. Its clock starts only when somebody taps “Start the clock”. “Rehearse” lets the program play the crew.",
  "guide/shelf-read":
    "“Read” shows the procedure as prepared, with its findings, its plan and its printable page.",
  "guide/shelf-join":
    "“Join a walk” follows a walk that somebody else leads, with a code that its lead shows.",
  "guide/shelf-bring":
    "Files are chosen, dropped on the shelf or pasted as text. A log or a backup that is taken in twice does no harm: entries that are known already are left as they are.",
  "guide/shelf-units":
    "“Language and display” holds the language, the colours, the units and whether UTC has a date or the day of the year. “Units” shows quantities in metric or US customary units behind the written ones. Enter a value in the unit that its field names; what was written is what counts.",
  "guide/shelf-facts":
    "Steps, crew and planned finish beside a procedure are worked out on this device from its file, without an orbit and with nothing that has happened.",
  "guide/shelf-findings":
    "Errors, cautions and advice are what the checker found. “No findings” means that it has nothing to say about order, places, items and wording; it does not check judgement.",
  "guide/shelf-room":
    "The lines at the foot say how well this browser keeps what is entered, and how much room is left.",
  "guide/shelf-unreadable":
    "A procedure that cannot be read cannot be followed: “Read” names each mistake with its line and what to do.",
  "guide/shelf-lost":
    "A walk that is missing here may be on another device: take in its exported log, or join it over its hub. Nothing is sent anywhere by itself.",
  "guide/shelf-remove":
    "“Export and remove” saves the log first, and removes nothing when the saving is cancelled. Back up everything before you change devices.",
} as const;
