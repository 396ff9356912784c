/** What the checker says of a procedure that could be read: order, decisions, supplies, ways, tethers, custody, wording. */
export const findingsOfProcedureWords = {
  "check/when": "{$finding :message} (When {$conditions :list style=chained}.)",
  "check/when-outcome": '"{$decision}" comes out "{$outcome}"',
  "check/when-get-ahead": 'of the get-ahead tasks only "{$task}" is done',
  "task/needs-get-ahead":
    'The get-ahead "{$task}" cannot be done without the get-ahead "{$other}". Make them one task, or let "{$task}" bring what it needs itself.',
  "task/needs-get-aheads":
    'The get-ahead "{$task}" cannot be done alone, only with all the others. Make them one task, or let "{$task}" bring what it needs itself.',
  "check/when-get-aheads": "get-ahead tasks are done",
  "order/not-all-scenarios":
    "There are more combinations of outcomes than can be checked one by one; every single and pairwise departure from the expected ones was checked ({$count :integer}).",
  "order/deadlock": "Deadlock: these steps wait on each other for ever: {$waits :clauses}.",
  "order/waits-in-lane":
    '"{$step}" ({$crew :list style=chained}) waits on "{$other}", which stands before it in the lane',
  "order/waits-on-step":
    '"{$step}" ({$crew :list style=chained}) waits on "{$other}", done by {$otherCrew :list style=chained}',
  "order/more-races":
    "More than {$most :integer} pairs of steps get in each other’s way over items or states; the rest are not listed.",
  "order/mend-deadlock": '"{$other}" goes out of what "{$step}" comes after.',
  "place/mend-at": '"{$step}" is done at {$place}.',
  "place/mend-translation": 'Before "{$step}" {$crew} moves to {$place}.',
  "custody/mend-receiver": '{$crew} takes part in "{$step}".',
  "order/race-moves":
    '"{$mover}" ({$moverCrew :list style=chained}) and "{$other}" ({$otherCrew :list style=chained}) both move {$item}, and nothing says which comes first. Let one come after the other.',
  "state/race":
    '"{$one}" sets {$state} to {$value}, "{$other}" sets it to {$otherValue}, and nothing says which comes first. Let one come after the other.',
  "state/needs": '"{$step}" needs {$state} to be {$value}: {$why :message}',
  "state/between":
    '"{$other}" sets {$state} to {$is}, and may come before "{$step}". Let "{$other}" come after "{$step}", or let a step between them set it to {$value} again.',
  "state/not-set-first":
    '"{$other}" sets {$state} to {$value}, but nothing says that it comes first; until then it is {$is}. Let "{$step}" come after "{$other}", or set it in a step before.',
  "state/set-too-late":
    '"{$other}" sets {$state} to {$value} only after "{$step}"; until then it is {$is}. Put "{$step}" behind "{$other}", or set it in a step before.',
  "state/never-set":
    'it is {$is} from the start, and no step sets {$state} to {$value}. Add a step before "{$step}" that does, or correct what "{$step}" needs.',
  "state/unset":
    '"{$other}" sets {$state} to {$is}, and nothing after it sets it to {$value} again. Let "{$step}" come before "{$other}", or add a step between them that sets it.',
  "state/not-at-its-end":
    "At the end {$state} is {$is}, as it was at the start, not {$end} as it must be. Add a step that sets it.",
  "state/left-by":
    'At the end {$state} is {$is}, as "{$step}" leaves it, not {$end} as it must be. Add a step after that one that sets it.',
  "order/race-takes-out":
    '"{$mover}" ({$moverCrew :list style=chained}) moves {$item} while "{$other}" ({$otherCrew :list style=chained}) needs it where it is, to get at {$handled}, and nothing says which comes first. Let one come after the other.',
  "order/race-puts-in":
    '"{$mover}" ({$moverCrew :list style=chained}) moves {$item} while "{$other}" ({$otherCrew :list style=chained}) puts {$handled} into it, and nothing says which comes first. Let one come after the other.',
  "decision/one-outcome":
    'The decision "{$decision}" has one outcome only, "{$outcome}", so there is nothing to decide.',
  "decision/no-branch": 'No step depends on how the decision "{$decision}" comes out.',
  "decision/never-performed": '"{$step}" is never performed: the outcomes it needs never come together.',
  "task/closeout-get-ahead":
    '"{$task}" must be done on the way home, so it cannot be a get-ahead that is left out when time is short.',
  "record/no-supply":
    '{$crew :list of=any} has no supply "{$supply}", so a record of it is nobody\u2019s reading. Name a supply of whoever does the step.',
  "record/other-unit":
    'The record is in {$unit}, and the supply "{$supply}" in {$other}. Give both the same unit.',
  "supply/redline-above-full":
    "{$crew}’s {$supply} is full at {$full :number} and at its redline at {$redline :number}: it would be spent before the walk begins.",
  "supply/short":
    'At the planned rate {$crew}’s {$supply} meets its redline at PET {$at :clock}, {$before :length} before {$crew} is done with "{$step}".',
  "watch/never-on":
    'The watch "{$watch}" is over before it begins: "{$until}" does not start after "{$from}" is done.',
  "watch/none-due":
    'The watch "{$watch}" never falls due: it comes round every {$every :length}, but is on for {$on :length} only.',
  "time/beyond-turn-back":
    '"{$step}" keeps {$crew} at {$place} until PET {$until :clock}. Broken off then, the return takes {$back :length} with all of the closeout, so everybody would have to turn back by PET {$latest :clock} to be in by the limit of {$limit :clock}: {$over :length} beyond.',
  "time/no-return":
    'Broken off at the end of "{$step}", PET {$at :clock}, the closeout fits no window any more, so no time to turn back can be told from there on.',
  "time/return-barred":
    'Broken off at the end of "{$step}", PET {$at :clock}, the way home is barred, so no time to turn back can be told from there on. {$why :message}',
  "time/return-breaks": 'Broken off at the end of "{$step}", PET {$at :clock}: {$what :message}',
  "return/bar": "{$need :message} {$setter :message}",
  "return/step-needs": '"{$step}" needs {$state} to be {$value}, and it is {$is}.',
  "return/way-needs": "{$crew}’s way to {$place} needs {$state} to be {$value}, and it is {$is}.",
  "return/refuge-needs": "{$crew}’s way to a refuge needs {$state} to be {$value}, and it is {$is}.",
  "return/set-by-none": "No step sets that.",
  "return/set-by-closeout": '"{$step}" would have to set that, and cannot be done before.',
  "return/set-by-left-out":
    '"{$step}" would have to set that, and is no step of closeout, so it is left out on the way home.',
  "return/set-by-done": '"{$step}" would have to set that again: it is done, and no step of closeout does.',
  "return/done-late": 'On the way home "{$step}" is done {$over :length} later than its PET {$by :pet}.',
  "return/started-late":
    'On the way home "{$step}" starts more than {$within :margin} after "{$after}": {$over :length} too late.',
  "place/no-refuge":
    "No place is a refuge, so no time to turn back can be told. Mark the places where one is safe.",
  "place/no-way-home":
    "No routes with a time lead from {$place} to a refuge, so no time to turn back can be told for the steps there.",
  "place/no-start": '"{$step}" has no time, and nobody who does it has a place to start from.',
  "place/not-there":
    '{$crew} is at {$place}, but "{$step}" is done at {$at}, and no translation leads there.',
  "place/no-way-unknown":
    'It is not known where {$crew} is before "{$step}", so the time of the translation cannot be taken from the routes.',
  "place/no-way": 'No routes with a time lead from {$from} to {$to}, so "{$step}" needs a time of its own.',
  "text/confirms-itself":
    'In "{$step}" {$crew} confirms what {$crew} does alone; let somebody else confirm it.',
  "unit/not-valid":
    '"{$unit}" is not a UCUM code, so that nobody can tell what the figure means. Write the code of the unit, such as kPa, N.m or /min.',
  "unit/not-valid-meant":
    '"{$unit}" is not a UCUM code, so that nobody can tell what the figure means. The nearest code is "{$meant}".',
  "unit/mend": '"{$unit}" becomes "{$meant}".',
  "size/far-off":
    'In "{$step}" {$record} has a limit of {$value :number} {$unit}, over a hundred times off every other limit in {$unit}. See whether the figure and the unit go together.',
  "time/zero":
    '"{$step}" takes no time, and yet something is done in it. Say how long it takes, or leave out what is done so that it is a milestone.',
  "time/long":
    '"{$step}" takes {$likely :length} and {$high :length} at most, over four hours for one step. See whether the time is right, or make several steps of it.',
  "time/spread":
    '"{$step}" takes {$low :length} at least and {$high :length} at most, over a hundred times as long. See whether both are in the right unit.',
  "time/seconds":
    '"{$step}" takes {$likely :length}, where half of the steps take over {$usual :length}. See whether minutes are meant.',
  "text/hand-over-not-confirmed":
    'In "{$step}" {$item} passes from one to another, and nobody confirms that it is held. Add a confirmation.',
  "text/mate-not-confirmed":
    'In "{$step}" something is joined, and nobody confirms that it is. Add a confirmation.',
  "text/many-actions":
    '"{$step}" seems to hold more than one action; one action a step is easier to follow and to mark.',
  "text/no-verb": '"{$step}" does not open with what to do; begin with the verb.',
  "text/receiver-not-named": 'In "{$step}" {$item} passes to {$crew}, but the text does not name {$crew}.',
  "place/way-closed":
    'In "{$step}" {$crew} goes from {$from} to {$to}, which is a way only while {$state} is {$value}: {$why :message}',
  "tether/reach-not-known":
    'No routes lead from {$anchor}, where {$crew}’s tether is anchored, to {$place}, so it cannot be told whether the tether reaches in "{$step}".',
  "tether/out-of-reach":
    'In "{$step}" {$crew} is at {$place}, {$way :metres} by the shortest way from {$anchor}, where {$crew}’s tether is anchored. The tether is {$length :metres} long: {$short :metres round=up} too short. Move the anchor nearer first.',
  "tether/anchor-not-there":
    'In "{$step}" the anchor of {$crew}’s tether is moved to {$anchor}, but {$crew} is at {$place}.',
  "tether/shared-route":
    "The tethers of {$one} ({$oneDuring :message}) and {$other} ({$otherDuring :message}) may both lie over the way between {$from} and {$to}. Keep them clear of each other.",
  "tether/in-step": 'in "{$step}"',
  "tether/from-step-to-step": 'from "{$first}" to "{$last}"',
  "custody/would-be-inside-itself": '{$item} would be inside itself after "{$step}".',
  "custody/not-held":
    'In "{$step}" {$crew :list style=chained} cannot move {$item}, which is elsewhere: {$where :message}.',
  "custody/hand-over-apart":
    'In "{$step}" {$item} cannot pass from {$giver} ({$giverAt :message}) to {$receiver} ({$receiverAt :message}). Let both be at one place first, or say with "at" where it is done.',
  "custody/hands-full":
    'After "{$step}", at PET {$at :clock}, {$crew} has {$items :list style=chained} in hand, which takes {$needed :integer} hands. Put something away first, or hand it over.',
  "custody/hands-full-at-start":
    "At PET {$at :clock} {$crew} has {$items :list style=chained} in hand, which takes {$needed :integer} hands. Let something start elsewhere.",
  "place/inside-works-outside":
    '"{$step}" is done at {$place}, which is outside, and nobody who does it is: {$crew :list style=chained}. Name somebody who is outside, or take the place away.',
  "custody/receiver-absent": 'In "{$step}" {$item} passes to {$crew}, who does not take part in the step.',
  "custody/place-not-there":
    'In "{$step}" {$item} is left at {$place}, but nobody who does the step is there.',
  "custody/bag-not-at-hand":
    'In "{$step}" {$item} goes into {$bag}, which {$crew :list style=chained} do not have at hand.',
  "custody/not-at-its-end": "At the end {$item} is not where it must be ({$end :message}): {$is :message}.",
  "custody/left-outside":
    "{$item} is left outside at the end ({$is :message}). Bring it in, or give it an end.",
  "custody/where-nowhere": "nowhere",
  "custody/where-unknown": "at an unknown place",
  "custody/where-crew": "with {$crew :list style=chained}",
  "custody/where-inside": "inside",
  "custody/where-ground": "on the ground",
  "custody/where-place": "at {$place}",
  "custody/where-item": "in {$item}",
  "words/no-member": 'In the words for {$language}, "{$key}" is the id of nothing that has a text.',
  "words/no-text":
    'In the words for {$language}, "{$key}" has a "{$field}" for which the author has no text.',
  "words/several":
    'In the words for {$language}, "{$key}" could mean several things that have a "{$field}". Write the list in front of the id, such as "places {$key}".',
  "words/too-many": 'In the words for {$language}, "{$key}" has more under "{$field}" than the author wrote.',
  "words/older":
    'The text for {$language} of "{$field}" in "{$key}" is older than the text it translates: that was "{$was}" and is "{$is}".',
  "words/missing":
    ".input {$count :integer} .match $count one {{One text has no words for {$language} yet; there the author’s is shown.}} * {{{$count} texts have no words for {$language} yet; there the author’s are shown.}}",
} as const;
