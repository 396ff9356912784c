/** The one place of alerts on the follow screen, and the list behind it. */
export const followAlertWords = {
  "alert/level-act-now": "ACT NOW",
  "alert/level-look-soon": "LOOK SOON",
  "alert/level-know": "KNOW",
  "alert/alerts": "Alerts",
  "alert/since": "Since PET {$since :clock}.",
  "alert/seen-by": "Seen by {$who}.",
  "alert/seen": "Seen",
  "alert/step": "Step {$number}",
  "alert/more": "{$count :integer} more",
  "alert/none": "No alert holds.",
  "alert/sounds": "Sound and vibrate on this device for",
  "alert/raised-so-far": "Raised so far",
  "alert/raised-at": "PET {$at :clock}",
  "alert/how":
    "An alert tells and orders nothing: flight rules and the people in charge decide. One that asks to act now stays until it is over, the others until they are seen.",
} as const;
