// Many cells at once: a block from a spreadsheet, and everyone right in a problem except some.

import { ask, get, refusal } from "./kit.js";

/** @typedef {import("./marking_cell.js").Cell} Cell */
/** @typedef {import("./marking_cell.js").Seen} Seen */
/** @typedef {import("./marking_desk.js").Desk} Desk */

const label = get("column-label", HTMLSelectElement);
const wrong = get("column-wrong", HTMLInputElement);

/**
 * Lay a pasted block on the grid; a text that is no block is left to the field.
 * @param {Desk} desk
 * @param {ClipboardEvent} event
 */
export async function paste(desk, event) {
  const cell = desk.grid.at(event);
  const text = event.clipboardData?.getData("text/plain") ?? "";
  if (!cell || !(/[\t\n\r]/.test(text) || (!cell.editing && /[,;]/.test(text)))) return;
  event.preventDefault();
  const form = new FormData();
  for (const [name, value] of Object.entries({ text, code: cell.code, label: cell.label })) form.set(name, value);
  try {
    /** @type {{ cells: [string, string, string][], told: string[] }} */
    const laid = await ask(desk.to("paste"), form);
    const { here } = desk;
    /** @type {[Cell, string][]} */
    const writes = laid.cells.map(([code, problem, written]) => [desk.grid.of(code, problem), written]);
    desk.change(writes.filter(([one]) => !(one === here && one.editing)));
    if (!here.editing) {
      here.input.select();
      desk.tell();
    }
    desk.announce([`${writes.length} ${writes.length === 1 ? "answer" : "answers"} pasted.`, ...laid.told].join(" "));
  } catch (error) {
    desk.announce(refusal(error).message);
  }
}

/** Go to the form for the problem one is in. @param {Desk} desk */
export function toColumn(desk) {
  desk.commit(desk.here);
  label.value = desk.here.label;
  wrong.focus();
  wrong.select();
}

/** @param {Desk} desk */
async function fill(desk) {
  const problem = label.value;
  await desk.saving.rest();
  if (!desk.saving.idle) {
    desk.announce("Not filled in: some cells are not kept yet.");
    return;
  }
  /** @type {{ kept: Seen[], left: string[] }} */
  const found = await ask(desk.to("column"), { label: problem, wrong: wrong.value });
  const writes = found.kept.map((seen) => ({ cell: desk.grid.of(seen.code, seen.label), seen }));
  desk.undo.push(writes.map(({ cell, seen }) => [cell, cell.text, seen.text]));
  for (const { cell, seen } of writes) cell.take(seen);
  wrong.value = "";
  desk.announce(`${writes.length} filled in, ${found.left.length} left to type.`);
  const top = desk.grid.rows[0].find((cell) => cell.label === problem);
  (desk.grid.every.find((cell) => cell.code === found.left[0] && cell.label === problem) ?? top)?.input.focus();
}

/** @param {Desk} desk */
export function listenToColumn(desk) {
  const form = get("column", HTMLFormElement);
  form.addEventListener("keydown", (event) => { if (event.key === "Escape") desk.here.input.focus(); });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    fill(desk).catch((error) => desk.announce(refusal(error).message));
  });
}
