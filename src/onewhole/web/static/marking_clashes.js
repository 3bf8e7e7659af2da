// Cells that were changed in two windows: both texts are shown, and the teacher chooses.

import { find, get, make } from "./kit.js";

/** @typedef {import("./marking_cell.js").Cell} Cell */
/** @typedef {import("./marking_desk.js").Desk} Desk */

/**
 * The rows that stand there, by their cell: one that says the same stays where it is, and with it the focus.
 * @type {WeakMap<Cell, { says: string, row: Element }>}
 */
const shown = new WeakMap();

/** @param {Desk} desk */
export function showClashes(desk) {
  const place = get("clashes");
  const list = find(place, "ul");
  const rows = desk.grid.every.flatMap((cell) => (cell.stands === null ? [] : [rowOf(desk, cell, cell.stands)]));
  for (const before of [...list.children]) if (!rows.includes(before)) before.remove();
  rows.forEach((one, at) => {
    if (list.children[at] !== one) list.insertBefore(one, list.children[at] ?? null);
  });
  place.hidden = !rows.length;
}

/**
 * @param {Desk} desk
 * @param {Cell} cell
 * @param {string} other
 */
function rowOf(desk, cell, other) {
  const says = JSON.stringify([cell.text, other]);
  const before = shown.get(cell);
  if (before?.says === says) return before.row;
  const made = row(desk, cell, other);
  shown.set(cell, { says, row: made });
  return made;
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
