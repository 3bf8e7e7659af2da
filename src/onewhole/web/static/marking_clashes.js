// Cells that were changed in two windows: both texts are shown, and the teacher chooses.

import { find, get, make } from "./kit.js";

/** @typedef {import("./marking_cell.js").Cell} Cell */
/** @typedef {import("./marking_desk.js").Desk} Desk */

/** @param {Desk} desk */
export function showClashes(desk) {
  const place = get("clashes");
  const rows = desk.grid.every.flatMap((cell) => (cell.stands === null ? [] : [row(desk, cell, cell.stands)]));
  place.hidden = !rows.length;
  find(place, "ul").replaceChildren(...rows);
}

/**
 * @param {Desk} desk
 * @param {Cell} cell
 * @param {string} other
 */
function row(desk, cell, other) {
  const button = (/** @type {string} */ words, /** @type {string} */ text) => {
    const made = make("button", { type: "button", class: "small" }, words);
    made.addEventListener("click", () => settle(desk, cell, text));
    return made;
  };
  return make("li", {}, `${cell.name}: here “${cell.text}”, in the other window “${other}”. `,
    button(`Keep “${cell.text}”`, cell.text), " ", button(`Take “${other}”`, other));
}

/**
 * @param {Desk} desk
 * @param {Cell} cell
 * @param {string} text
 */
function settle(desk, cell, text) {
  cell.kept = cell.stands ?? cell.kept;
  cell.stands = null;
  cell.write(text);
  desk.judge.look(cell);
  if (text === cell.kept) cell.state = "kept";
  else desk.saving.put([cell]);
  showClashes(desk);
  cell.input.focus();
}
