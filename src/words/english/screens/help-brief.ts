/** The page of help of the briefing. */
export const helpOfBriefWords = {
  "guide/brief": "The briefing",
  "guide/brief-play":
    "The map, the caption and the strip of the timeline are played together, at 1 to 120 times the speed of the walk. The buttons go to the next or previous step and task; the slider and the strip go to any moment.",
  "guide/brief-keys":
    "On a keyboard: the space bar plays and pauses, the arrows left and right go by step, Page Up and Page Down by task.",
  "guide/brief-audience":
    "“Window for the audience” opens a second window for a second screen, which shows what you show. Your own window then has your notes, what comes next, the time left and the next alerts. The window says so when yours is closed.",
  "guide/brief-quiz":
    "With the quiz on, the briefing stops before a joint step and asks who waits where and what each carries. Nothing is scored or kept.",
  "guide/brief-spoken":
    "Spoken captions use a voice of this device alone, where it has one. The written caption is then by task.",
  "guide/brief-paper":
    "The storyboard prints on A4 and letter, landscape. The file can be given to anybody: it plays without this program and without a network.",
  "guide/brief-figures":
    "Everything shown is the plan, by likely times, or the walk as it was entered; above 60× captions are by task, since steps go by too fast to be read.",
  "guide/brief-flown": "From the review the briefing shows what happened, up to the last entry or to now.",
  "guide/brief-trouble":
    "When a place is not on the map, the procedure does not tell where somebody is. When day and night are missing, choose the light and the start on the timeline of the plan.",
} as const;
