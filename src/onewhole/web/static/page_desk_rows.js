// The rows that lie under the letters: they carry the numbers of the problems and the marks of the lines.

import { all, get, make } from "./kit.js";
import { lines, typed } from "./page_desk_text.js";

const rows = get("rows");

/** @typedef {import("./page_desk_notes.js").Found} Found */

/** The row of a line. @param {number} line */
export const rowOf = (line) => rows.children[line - 1];

/**
 * Mark the lines that something in view is about, and number the problems that have no number of their own.
 * @param {Found} found
 * @param {import("./page_desk_notes.js").Note[]} notes those in view
 */
export function markRows({ mistakes, counted }, notes) {
  /** @type {Map<number, string>} */
  const of = new Map();
  const set = (/** @type {number | null} */ line, /** @type {string} */ name) => { if (line && (!of.has(line) || name !== "note")) of.set(line, name); };
  for (const note of notes) for (const { line } of note.places) set(line, note.advice ? "advice" : "note");
  for (const mistake of mistakes) set(mistake.line, mistake.story ? "advice" : "mistake");
  const numbers = new Map(counted.map(({ line, name }) => [line, name]));
  all(rows, ":scope > div").forEach((row, index) => {
    row.className = of.get(index + 1) ?? "";
    row.dataset.number = numbers.get(index + 1) ?? "";
  });
}

/** Choose a line in the field, or put the caret into its column. @param {number} line @param {number | null} [column] */
export function goTo(line, column = null) {
  const start = lines().slice(0, line - 1).reduce((sum, text) => sum + text.length + 1, 0);
  const end = start + (lines()[line - 1] ?? "").length;
  typed.focus();
  const from = column ? Math.min(start + column - 1, end) : start;
  typed.setSelectionRange(from, column ? from : end);
  rowOf(line)?.scrollIntoView({ block: "nearest" });
}

function draw() {
  const texts = lines();
  while (rows.children.length > texts.length) rows.lastChild?.remove();
  texts.forEach((text, index) => {
    const row = rows.children[index] ?? rows.appendChild(make("div"));
    if (row.textContent !== (text || "\u200b")) row.textContent = text || "\u200b";
  });
}

typed.addEventListener("changed", draw);
draw();
