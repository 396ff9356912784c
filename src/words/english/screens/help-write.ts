/** The help of the screen on which a procedure is written. */
export const helpOfWriteWords = {
  "guide/write": "Help: writing a procedure",
  "guide/write-table":
    "The table has tasks and steps in reading order. Arrow keys go from cell to cell, Enter edits, Escape leaves it as it was. Insert begins a step, Shift with Insert a task: Enter goes on to its time and then to the next step, Tab goes through who, time and what it comes after, such as 1.3 + 5. Alt with up or down moves the row, Shift with up or down selects more, Delete takes out. Buttons do the same.",
  "guide/write-beside":
    "Beside the table stands everything about the row that is chosen. A field counts once you leave it or press Enter.",
  "guide/write-link":
    "Link: choose a step, press Link, type how long must pass, and tap the step that comes before, in the table or on the timeline. By keys: go to it and press Enter, or choose it beside. Escape leaves it.",
  "guide/write-joint":
    "Joint step: choose a step, press Joint step, and tap the strands at its row, which say who takes part then or no longer. Pressing the call signs beside, or under “Who”, does the same.",
  "guide/write-drag":
    "The handle at the right of a row moves it, and what is selected with it: a line shows where it would go. Escape, or letting go beside the table, leaves everything as it was.",
  "guide/write-timeline":
    "Timeline shows the plan of what is written. A tap on a bar selects its step; while a step is linked, it is what comes before.",
  "guide/write-map":
    "Under Lists, the places have a map: move them, join two by a way, or put in a new one. A way's length is measured by the positions; its time is yours to say.",
  "guide/write-offers":
    "“Not held or at hand then” and “no way there” follow from the plan at the moment when the step begins. They can be chosen all the same, and are findings then.",
  "guide/write-undo":
    "Every edit is undone as a whole, up to 500 of them, also after the page was loaded again.",
  "guide/write-figures":
    "Finish, margin and the chance of being within the limit follow every edit. Until they do, the line says that they are of before.",
  "guide/write-kept":
    "What you write is on this device at once. A revision is saved with who and why, stands beside the earlier ones, and can be followed from the shelf.",
  "guide/write-two":
    "Where the same manuscript is open on two pages, the one that writes later is told; nothing is written over until somebody decides.",
  "guide/write-lost":
    "“Not kept” means that the device's store cannot be used: save the file before you leave the page.",
  "guide/write-languages":
    "“Languages” among the lists puts each text beside its text in another language. Enter takes what is typed and goes on to the next row; “It still holds” says of an older text that it need not be changed.",
} as const;
