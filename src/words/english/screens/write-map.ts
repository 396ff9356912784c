/** The map on which places are put, and the pictures of a procedure. */
export const writeMapWords = {
  "write/map": "Places on the map",
  "write/map-not-yet": "The map can be drawn once the procedure has no finding of level error.",
  "write/map-place": "Place to move",
  "write/map-step": "By how much",
  "write/map-metres": "{$metres :metres}",
  "write/map-move": "Move the place",
  "write/map-left": "← Left",
  "write/map-right": "→ Right",
  "write/map-up": "↑ Up",
  "write/map-down": "↓ Down",
  "write/map-how":
    "Tap a place to choose it, and a free spot to put it there. The buttons, and the arrow keys while one of them has the focus, move it. Heights are typed in its form.",
  "write/map-says":
    ".input {$count :integer} .match $count one {{A map of one place, from above.}} * {{A map of {$count} places, from above.}}",
  "write/map-ways": "Ways from this place",
  "write/map-way": "{$place}: {$length :metres} by the way, {$straight :metres} straight",
  "write/no-picture": "This is no picture that a procedure can hold: PNG, JPEG, WebP or SVG.",
  "write/pictures-how":
    "PNG, JPEG, WebP or SVG, up to 400 kB each and 3 MB together. Steps name the pictures that are shown with them.",
  "write/map-no-ways": "No way leads from this place.",
} as const;
