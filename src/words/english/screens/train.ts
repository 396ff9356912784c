/** The trainer's screen. */
export const trainWords = {
  "train/title": "Surprises",
  "train/no-rehearsal": "This walk is no rehearsal, and takes no surprises.",
  "train/not-for-followers":
    "Surprises are for the trainer. Whoever follows is told nothing of them before the walk is closed.",
  "train/told-in-review": "The walk is closed. Its review tells what became of each surprise.",
  "train/none": "No surprises come with “{$title}”. Choose a file of them.",
  "train/choose-file": "Choose a file…",
  "train/file-given":
    "These are surprises for rehearsals of the procedure “{$procedure}”. They stand ready on this device, under “Surprises” on the follow screen of such a rehearsal.",
  "train/file-for-none":
    "These are surprises, which belong under “Surprises” on the follow screen of a rehearsal; the file does not say of which procedure, and nothing was kept of it.",
  "train/findings": "What is wrong with the file",
  "train/finding-at": "Line {$line :integer}: {$finding :message}",
  "train/not-entered": "It could not be entered: {$why}",
  "train/no-effect": "It was entered and has no effect: {$why :message}.",
  "train/kept-back":
    "The rehearsal is followed on this device too. Until it is closed, its list, its timeline, its map and its review so far show what a surprise brings about, and never that it is one. In the log, and in a log that is exported, surprises are written so that nobody reads them by accident; that is no lock.",
  "train/show-them": "I am the trainer: show the surprises",
  "train/hide-them": "Hide the surprises",
  "train/lay-how":
    ".input {$count :integer} .match $count one {{The seed draws whether this {$count} surprise comes. You are not told.}} * {{The seed draws which of these {$count} surprises come, and when. You are not told which.}}",
  "train/seed": "Seed: the same one draws the same",
  "train/lay": "Draw and lay them",
  "train/laid":
    ".input {$count :integer} .match $count 0 {{The seed drew none.}} one {{{$count} surprise is laid.}} * {{{$count} surprises are laid.}}",
  "train/are-laid":
    ".input {$count :integer} .match $count one {{This rehearsal carries {$count} surprise. What it is stands in its review once it is closed.}} * {{This rehearsal carries {$count} surprises. What they are stands in its review once it is closed.}}",
  "train/too-late-to-lay":
    "The clock has been started, so that nothing can be laid any more. Surprises can still be fired by hand: here, or by a trainer who has joined by a hub.",
  "train/fired": "“{$title}” has been fired.",
  "train/not-started": "Surprises can be fired once the clock has been started.",
  "train/expected": "Expected of {$crew} within {$time :length}: {$notice} {$act}",
  "train/by-itself": "Not fired. Where it is laid, it comes by itself: {$when :message}",
  "train/laid-for": "Laid. It comes by itself: {$when :message}",
  "train/was-fired": "Fired at PET {$at}.",
  "train/came": "Came at PET {$at}.",
  "train/nobody-yet": "No entry shows yet that it was noticed.",
  "train/first-sign": "First sign {$time :length form=second} after it came, by {$who}: {$what :message}",
  "train/fire": "Fire",
  "train/fire-which": "Fire “{$title}”",
  "train/fire-now": "Fire “{$title}” now",
  "train/leave": "Not now",
  "train/sight": "What the followers see",
  "train/at": "PET {$at}",
  "train/crew": "Crew",
  "train/lane-ready": "ready",
  "train/lane-waiting": "waits",
  "train/lane-working": "works",
  "train/lane-finished": "has finished",
  "train/unseen": "Nobody has seen it.",
  "train/seen": "Seen by {$who}.",
  "guide/train": "Help: surprises",
  "guide/train-what":
    "A rehearsal can carry surprises, which a trainer has written in a file: a step that lasts, a value outside its limits, an item that is not there, somebody of whom nothing is heard, a supply that falls, a decision that comes out otherwise.",
  "guide/train-lay":
    "Before the clock starts, a seed draws which of them come, and when; nobody is told which. For this no trainer is needed.",
  "guide/train-fire":
    "A trainer joins by a code of a hub as trainer, sees everything, and fires surprises by hand. What is fired comes at once and is not taken back. The trainer's tablet marks nothing.",
  "guide/train-here":
    "Without a hub, or on the tablet that plays the crew, the trainer opens this page there, in a second tab too, and says so; until then it shows none of them. No network is needed. What is fired twice counts once, and what is fired after the closing has no effect.",
  "guide/train-file":
    "A file of surprises can also be given to the shelf. It then stands ready here, on this device, for every rehearsal of its procedure.",
  "guide/train-play":
    "The played crew does what the surprise says; the crew is played on the tablet that opened the rehearsal. Followers see what they would see: a value, a supply, a step that lasts, and the alerts that follow.",
  "guide/train-hidden":
    "On other tablets surprises are neither shown nor sent before the walk is closed. On the tablet that plays the crew they are in the log, written so that nobody reads them by accident; that is no lock.",
  "guide/train-review":
    "The review of the closed walk tells of each when it came, the first entry that shows that somebody noticed it, what was done and what it cost, beside what was expected. No marks are given.",
  "guide/train-wrong":
    "A file for another procedure, or one that names what is not there, is not taken: each finding names its line.",
} as const;
