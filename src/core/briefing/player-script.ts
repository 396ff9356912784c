/**
 * The script of a briefing's file. It reads the data beside it, and changes the page by elements and text alone, so that
 * nothing that a procedure says can become markup. It asks for nothing outside the page. A test holds its hash against
 * {@link PLAYER_HASH}.
 */
export const PLAYER_SCRIPT = String.raw`
"use strict";
(() => {
  const page = document, timer = performance;
  const part = (id) => page.getElementById(id);
  const data = JSON.parse(part("data").textContent);
  const SVG = "http://www.w3.org/2000/svg";
  const DRAWN = new Set(["g", "line", "path", "circle", "rect", "text"]);
  const calm = matchMedia("(prefers-reduced-motion: reduce)");
  const { finish, cues, chapters, drawings, nodes, captions, sentences } = data;
  let speed = 10, pet = 0, since = null, shown = null, told = "";

  const now = () => timer.now();
  const petNow = () => since === null ? pet : Math.min(finish, pet + Math.floor((now() - since) * speed));
  const last = (list, at) => {
    let found = list[0];
    for (const one of list) { if (one[0] > at) break; found = one; }
    return found;
  };
  const clock = (time) => {
    const s = Math.floor(time / 1000);
    const two = (n) => String(n).padStart(2, "0");
    return Math.floor(s / 3600) + ":" + two(Math.floor(s / 60) % 60) + ":" + two(s % 60);
  };
  const build = (number) => {
    const [tag, attributes, content] = nodes[number];
    const made = page.createElementNS(SVG, DRAWN.has(tag) ? tag : "g");
    for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, String(value));
    if (typeof content === "string") made.textContent = content;
    else for (const child of content) made.append(build(child));
    return made;
  };
  const slotIn = (person) => person?.querySelector(".card-slot");
  const inPx = (slot) => slot.getAttribute("transform").replace(/-?[\d.]+/g, "$&px").replace(" ", ", ");
  const slides = [];
  const slide = (before, after) => {
    if (calm.matches) return;
    for (const person of after.querySelectorAll(".person")) {
      const from = slotIn(before.querySelector('.person[data-crew="' + CSS.escape(person.dataset.crew) + '"]'));
      const to = slotIn(person);
      if (from && inPx(from) !== inPx(to)) slides.push([to, [{ transform: inPx(from) }, { transform: inPx(to) }]]);
    }
  };
  const layers = [...part("map").children];
  const drawnAs = layers.map(() => null);

  function draw() {
    const at = petNow();
    if (since !== null && at >= finish) { pet = finish; since = null; }
    const seen = calm.matches && since !== null ? (cues.filter((one) => one <= at).at(-1) ?? 0) : at;
    const drawing = last(drawings, seen);
    if (drawing !== shown) {
      shown = drawing;
      drawing[1].forEach((number, place) => {
        if (number === null || drawnAs[place] === number) return;
        const made = build(number);
        if (drawnAs[place] !== null) slide(layers[place], made);
        layers[place].replaceWith(made);
        layers[place] = made;
        drawnAs[place] = number;
      });
      for (const [slot, steps] of slides.splice(0)) slot.animate(steps, { duration: 240, easing: "ease-out" });
    }
    const text = last(captions, seen)[speed > 60 ? 2 : 1].map((number) => sentences[number]);
    if (text.join("\n") !== told) {
      told = text.join("\n");
      part("caption").setAttribute("aria-live", since === null ? "polite" : "off");
      part("caption").replaceChildren(...text.map((line) => {
        const made = page.createElement("p");
        made.dir = "auto";
        made.textContent = line;
        return made;
      }));
    }
    part("clock").textContent = clock(at);
    const scrubber = part("scrubber");
    if (page.activeElement !== scrubber || since !== null) scrubber.value = String(at);
    scrubber.setAttribute("aria-valuetext", "PET " + clock(at));
    const head = part("now"), from = Number(head.dataset.from), to = Number(head.dataset.to);
    const x = String(from + (to - from) * (finish > 0 ? at / finish : 0));
    head.setAttribute("x1", x);
    head.setAttribute("x2", x);
    const play = part("play");
    play.textContent = since === null ? play.dataset.play : play.dataset.pause;
    const chapter = last(chapters, at);
    for (const button of part("chapters").children)
      if ((Number(button.dataset.pet) === chapter[0] && button.textContent === chapter[1]) !== (button.getAttribute("aria-current") === "true"))
        button.setAttribute("aria-current", button.getAttribute("aria-current") === "true" ? "false" : "true");
    if (since !== null) requestAnimationFrame(draw);
  }

  const settle = () => { pet = petNow(); if (since !== null) since = now(); };
  const stopAt = (at) => { pet = Math.min(finish, Math.max(0, at)); since = null; draw(); };
  const after = (list) => list.find((one) => one > petNow()) ?? finish;
  const before = (list) => list.filter((one) => one < petNow()).at(-1) ?? 0;
  const starts = chapters.map(([at]) => at);
  const acts = {
    play() {
      if (since === null) {
        if (pet >= finish) pet = 0;
        since = now();
      } else { pet = petNow(); since = null; }
      draw();
    },
    "step-back": () => stopAt(before(cues)),
    "step-on": () => stopAt(after(cues)),
    "task-back": () => stopAt(before(starts)),
    "task-on": () => stopAt(after(starts)),
  };
  for (const [id, act] of Object.entries(acts)) part(id).addEventListener("click", act);
  for (const [at, title] of chapters) {
    const button = page.createElement("button");
    button.type = "button";
    button.dataset.pet = String(at);
    button.dir = "auto";
    button.textContent = title;
    button.addEventListener("click", () => stopAt(at));
    part("chapters").append(button);
  }
  part("speed").addEventListener("change", (event) => { settle(); speed = Number(event.target.value); draw(); });
  const scrubber = part("scrubber");
  scrubber.max = String(finish);
  scrubber.addEventListener("input", () => stopAt(Number(scrubber.value)));
  const KEYS = { " ": "play", k: "play", ArrowRight: "step-on", ArrowLeft: "step-back", PageDown: "task-on", PageUp: "task-back" };
  page.addEventListener("keydown", (event) => {
    const act = KEYS[event.key];
    const isField = /^(INPUT|SELECT)$/.test(event.target.tagName);
    if (!act || event.ctrlKey || event.metaKey || event.altKey || isField || (event.key === " " && event.target.tagName === "BUTTON")) return;
    event.preventDefault();
    acts[act]();
  });
  page.addEventListener("visibilitychange", () => draw());
  part("player").hidden = false;
  draw();
})();
`;

/** The hash of the script, by which the page's policy lets it run and no other (Content Security Policy Level 3). */
export const PLAYER_HASH = "sha256-mnaFXy+NtA1w7KvKFjIXNNv/Yrr2lI/iPYS13IuExVI=";
