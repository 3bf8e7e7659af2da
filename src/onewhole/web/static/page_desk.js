// The desk: what is typed is laid out while one types, with notes beside it and the order of the problems.

import { ask, find, get, latest, make } from "./kit.js";
import "./page_desk_kept.js";
import { drawNotes, inView } from "./page_desk_notes.js";
import { drawOrder } from "./page_desk_order.js";
import { tell } from "./page_desk_refused.js";
import { markRows } from "./page_desk_rows.js";
import { typed } from "./page_desk_text.js";

const desk = get("desk");
const pages = get("pages");
const told = get("told");
const empty = told.textContent; // the server's words for a desk with nothing on it
/** @typedef {{ picture: string, words: string }} Drawn */
/** A page laid out, with how it prints and its problems.
 * @typedef {import("./page_desk_notes.js").Found & { pages: Drawn[], problems: import("./page_desk_order.js").Stands[] }} Laid */

/** @type {Laid} */
const NOTHING = { mistakes: [], notes: [], problems: [], pages: [], told: "", counted: [] };

const look = latest(async () => {
  const text = typed.value;
  try {
    const found = text.trim() ? await ask(desk.dataset.toLive ?? "", { typed: text }) : NOTHING;
    if (typed.value === text) show(found);
  } catch (error) {
    tell(error);
  }
});

/** @param {Laid} found */
function show(found) {
  const isOld = found.mistakes.length > 0 && found.pages.length === 0;
  markRows(found, inView(found));
  desk.classList.toggle("old", isOld);
  if (!isOld) {
    drawPages(found.pages);
    drawOrder(found.problems);
  }
  const last = pages.children.length ? "This is the last page that could be read." : "Nothing of it can be read yet.";
  told.textContent = isOld ? last : found.told || empty;
  drawNotes(found);
}

/** @param {Drawn[]} found */
function drawPages(found) {
  while (pages.children.length > found.length) pages.lastChild?.remove();
  found.forEach((page, index) => {
    const figure = pages.children[index] ?? pages.appendChild(make("figure", {}, make("img")));
    const image = find(figure, "img", HTMLImageElement);
    if (image.src !== page.picture) image.src = page.picture;
    image.alt = page.words;
  });
}

typed.addEventListener("changed", look);
look();
