/** The help of the map. */
export const helpOfMapWords = {
  "guide/map": "Help: the map",
  "guide/map-places":
    "A ring is a place, and a ring in a frame is a refuge. The box under it counts the items there, with what is packed in them.",
  "guide/map-people":
    "A filled disc is a crew member, with a card that says what they do. Its edge has the dashes and the hue of their strand, and is wavy while they wait.",
  "guide/map-lines":
    "A tether's line runs from its anchor over the ways that were walked. It hangs in waves while its crew member waits, and is drawn thick where it is too short.",
  "guide/map-shared": "A diamond on a way: the lines of several run over it.",
  "guide/map-home":
    "Dots lead from whoever outside is farthest from a refuge to the nearest one. The card says how many metres that is by the ways, whatever states they need.",
  "guide/map-light":
    "The ground is darker at night, and the foot of the map says Day or Night where it is known.",
  "guide/map-ask":
    "Tap a place, a card, or choose from the list below the map, to read all that is known of it; an item of a place or a person can be tapped in turn.",
  "guide/map-move":
    "Drag, pinch, turn the wheel after a tap on the map, use the buttons, or with the keyboard the arrows, plus, minus and 0 for the whole.",
  "guide/map-moment":
    "While a walk is followed the map shows now. On a timeline and in a review it shows the moment that was touched or is set on its slider.",
  "guide/map-positions":
    "Positions are those of the file, in metres: to the right, up the page, and height in the view from the side. The ruler holds for both views.",
  "guide/map-where":
    "Where somebody is follows from their steps: at the place of the last one, or on the way by the share of its time that is over. Nobody's position is measured.",
  "guide/map-left":
    "What is left of a line is its length less what is out along the ways, never rounded up. Slack and knots are not counted.",
  "guide/map-sketch":
    "A sketch, not to scale: places without a position were laid out by the lengths of the ways, or positions and lengths disagree. Distances on it say nothing; the lengths in the list hold.",
  "guide/map-crowded":
    "A number stands for a name that has no room; the list below the map has the name. Enlarge the map to read it in its place.",
} as const;
