/** What alerts say while a walk runs. They tell; they order nothing. */
export const alertWords = {
  "alert/turn-back-passed": "The turn-back time has passed: it was {$at :clock}, {$ago :length} ago",
  "alert/turn-back-near": "The turn-back time is in {$time :length}, at {$at :clock}",
  "alert/return-barred": "{$crew :list}: the way back is barred. {$why :message}",
  "alert/no-return": "{$crew :list}: no way back into a refuge fits any more, or none is known",
  "alert/no-forecast": "No forecast can be made: what is left does not fit any more",
  "alert/over-limit": "By the forecast what is left takes {$over :length} longer than the limit",
  "alert/margin-small": "By the forecast {$margin :length} of the limit will be left",
  "alert/redline": "{$crew}: {$supply} has been at its redline since {$at :clock}",
  "alert/redline-near": "{$crew}: {$supply} will be at its redline in {$time :length}, at {$at :clock}",
  "alert/impossible-reading": "{$crew}: {$supply} is not counted as read: {$why :message}",
  "alert/watch-due": "{$crew :list}: {$watch} (due since {$due :clock})",
  "alert/hold": "The walk has been held since {$since :clock}",
  "alert/hold-because": "The walk has been held since {$since :clock}: {$reason}",
  "alert/decided-otherwise":
    "{$ask} {$outcome}; before that it was {$was}, and nothing was done on that branch",
  "alert/decided-otherwise-after":
    "{$ask} {$outcome}; before that it was {$was}, and on that branch was done: {$steps :list}",
  "alert/decided-contrary":
    "{$ask} {$who} decided {$outcome}, which counts; {$other} had decided {$was}, and nothing was done on that branch. The lead says which holds",
  "alert/decided-contrary-after":
    "{$ask} {$who} decided {$outcome}, which counts; {$other} had decided {$was}, and on that branch was done: {$steps :list}. The lead says which holds",
  "alert/asked-again":
    "{$ask} This is open again, and {$outcome} stays in force until it is decided otherwise",
  "alert/item-elsewhere": "{$item} is with {$holders :list}, and {$crew :list} needs it for {$step}",
  "alert/overtime":
    "{$crew :list}: {$step} (in work for {$time :length}, at most {$high :length} were planned)",
} as const;
