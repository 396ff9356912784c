/** What a hub answers to whoever asks it, beside the code for programs. */
export const hubAnswerWords = {
  "answer/body-too-large": "The body is too large: send it in smaller parts.",
  "answer/too-much-a-minute": "This device sends too much at once: wait a little.",
  "answer/media-type":
    "Send application/json, application/cloudevents-batch+json or application/cloudevents+json.",
  "answer/content-length": "The body is not as long as its Content-Length says.",
  "answer/bad-address": "The address is not written as an address is.",
  "answer/own-mistake": "The hub met a mistake of its own; its console says more.",
  "answer/headers-too-large": "The headers are over 16 kB.",
  "answer/too-slow": "The request took too long to come in.",
  "answer/full": "This hub has as many connections as it can hold: try again soon.",
  "answer/other-name":
    "This hub is not served under this name: open it by its address, or start it with --also-as and the name.",
  "answer/not-understood": "The request cannot be understood.",
  "judge/no-entry": "It is no entry: {$why :message}.",
  "judge/control-characters": "It is no entry: its source or id has control characters.",
  "judge/other-walk": "Its subject is not the walk that it was sent to.",
  "judge/seal-does-not-fit": "Its seal does not fit the key that its device joined with.",
  "judge/not-by-role": "It may not be written: {$why :message}.",
  "judge/too-long":
    "It has {$length :integer} characters, and an entry of its kind may have {$most :integer} here: shorten it.",
  "judge/no-room": "There is no more room for it: the walk, or this device's share of it, is full.",
  "judge/ahead":
    "Its hlc is {$seconds :integer} s ahead of the hub's clock: set the device's clock and stamp it anew.",
  "judge/time-ahead":
    ".input {$days :integer} .match $days one {{Its time is {$days} day ahead of the hub's clock: set the device's clock, or the hub's.}} * {{Its time is {$days} days ahead of the hub's clock: set the device's clock, or the hub's.}}",
  "judge/own-device":
    "It is of a device that this hub let in itself, which brings its own entries; this one is kept aside.",
  "judge/conflict": "Another entry with this source and id is here already; this one is kept aside.",
  "answer/no-token": "Join the walk first: this needs a token.",
  "answer/bad-token": "This token is not good (any more): join the walk again.",
  "answer/cross-site": "A page of another site may not do this.",
  "answer/other-walk": "This token is of another walk.",
  "answer/bad-walk": "This is not written as the id of a walk is.",
  "answer/no-device": "The owner's code is of no device: join the walk.",
  "answer/lead-only": "Only a lead of the walk may do this.",
  "answer/bad-code": "This code is not good (any more): ask for another.",
  "answer/code-used": "This code has let in as many devices as it may: ask for another.",
  "answer/walk-needed": "The owner's code is of no walk: say which.",
  "answer/relay-by-owner":
    "Only the hub's owner lets another hub in: make the code for it with the owner's code.",
  "answer/bad-proof":
    "The key of this device was not proved: ask for another challenge at once, and sign it for this hub, walk and device.",
  "answer/other-key":
    "The name of this device belongs to another key in this walk, and only that key may have it: join under a new name.",
  "answer/key-needed":
    "The name of this device belongs to a key in this walk, which was not proved: join with that key, or under a new name.",
  "answer/device-taken":
    "A device of this name is in the walk without a key, and keeps its name while it is in: join with its token or under a new name, or have a lead take it off.",
  "answer/device-left":
    "A device of this name wrote in this walk without a key and is out, so that nobody can tell whether this is the same: join with the owner's code of the hub, or under a new name.",
  "answer/device-elsewhere":
    "This name belongs to a device of another hub that this one is linked with: join there, or under a new name.",
  "answer/too-many": "Too many requests: wait a little.",
  "answer/too-many-tries": "Too many wrong codes came from this network: try again in {$seconds :integer} s.",
  "answer/not-json": "The body is not JSON in UTF-8.",
  "answer/bad-part": '"{$where}" is missing or wrong in the body.',
  "answer/bad-body": "The body is not a JSON object as asked for.",
  "answer/store": "The store of this hub cannot be written.",
  "answer/too-many-entries": "Send at most {$most :integer} entries at once.",
  "answer/bad-cursor": "A cursor is written <epoch>:<offset>, or with its check behind.",
  "answer/send-one": "Send one event.",
  "answer/send-array": "Send a JSON array of events.",
  "answer/not-found": "There is nothing at this address.",
  "answer/no-invitation": "There is no such invitation to this walk (any more).",
  "answer/no-follower": "No such device is in this walk.",
} as const;
