/** What still fits under the limit: the panel on the follow screen and on the timeline of a plan. */
export const fitWords = {
  "fit/title": "What still fits",
  "fit/tool": "Late?",
  "fit/in-time": "In time means",
  "fit/by-chance": "nine in ten samples are done by the limit",
  "fit/by-likely": "likely times are, whatever the chance",
  "fit/working": "Looking at what fits …",
  "fit/failed": "What fits could not be worked out here. Close the panel and ask again.",
  "fit/from": "From PET {$now :clock}, limit {$limit :clock}.",
  "fit/from-no-limit": "From PET {$now :clock}. The procedure has no limit, so that everything fits.",
  "fit/proven": "Proven best: nothing that fits is worth more ({$tried :integer} sets looked at).",
  "fit/no-choice": "It fits. There is no get-ahead left to choose.",
  "fit/best-found":
    "Best found: worth {$worth :number maximumFractionDigits=2}; nothing that fits is worth more than {$bound :number maximumFractionDigits=2} ({$tried :integer} sets looked at).",
  "fit/no-plan": "Does not fit: no plan can be made of the essential work from here.",
  "fit/never": "Does not fit under any limit: too often a step of the essential work fits no window.",
  "fit/short": "Does not fit: the essential work alone is short by {$time :length}.",
  "fit/without-any": "No get-ahead",
  "fit/keep-to-plan": "Keep to the plan, without any get-ahead",
  "fit/with": "{$tasks :list} (worth {$worth :number maximumFractionDigits=2})",
  "fit/without": "Left out: {$tasks :list}",
  "fit/in-time-share": "In time",
  "fit/amend": "See what the plan would come to with this",
  "fit/share": "{$share :chance} (± {$error :number maximumFractionDigits=1} points)",
  "fit/windows": "Its steps need {$windows :list}.",
  "fit/left": "Not as it should be at the end",
  "fit/again": "Ask again from now",
  "fit/leave-out": "Leave essential work out",
  "fit/leave-out-how":
    "Nothing essential is left out unless you tick it here. Of a task that is ticked nothing more is counted.",
  "fit/how":
    "Nothing is changed here. Finish is by likely times; “in time” is the share of samples of this search's own that are done by the limit. Worth is the author's figure, 1 unless given.",
} as const;
