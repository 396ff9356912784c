/** What is said of amendments of a running walk: why one has no effect, and what one does. */
export const amendmentWords = {
  "walk/amended": "The plan was amended",
  "walk/amended-because": "The plan was amended: {$reason}",
  "walk/step-dropped": 'an amendment took "{$step}" out of the plan',
  "amend/changes-nothing": "it changes nothing",
  "amend/unreadable": "its changes cannot be read: {$why :message}",
  "amend/cannot-apply": "change {$number :integer} cannot be made: {$why :message}",
  "amend/unsound": "the procedure could not be used with it: {$why :message}",
  "amend/begun-dropped": '"{$step}" has begun or is complete, and cannot be taken out of the plan',
  "amend/entered-dropped":
    'entries of the walk tell of "{$step}", so that it cannot be taken out of the plan; it can be skipped with a reason',
  "amend/begun-moved": '"{$step}" has begun or is complete, and cannot be moved',
  "amend/begun-changed":
    '"{$step}" has begun, and keeps its performers, its place, its decision and what it moves',
  "amend/complete-changed": '"{$step}" is complete, and cannot be changed',
  "amend/before-begun":
    '"{$step}" would come before "{$begun}", which has begun or is complete, among the steps of {$crew}',
  "amend/decision-gone": 'the decision "{$decision}" was taken, and must stay as it is',
  "amend/named-gone": 'entries of the walk name "{$id}", which must stay in the procedure',
  "amend/no-order": "no order of the remaining steps is possible: {$why :message}",
  "amend/no-forecast": "The rest of the walk cannot be planned any more.",
  "amend/unfit": '"{$step}" fits no window any more.',
  "amend/over-limit": "By likely times the walk ends after its limit: the margin is {$margin :margin}.",
  "amend/no-home": "The way home cannot be told any more.",
  "amend/past-redline":
    "{$crew}: {$supply} is at its redline before the last step is done; the margin is {$margin :margin}.",
  "amend/not-there": "there is no such amendment, or it has no effect",
  "amend/already-seen": "this device has already seen the amendment",
} as const;
