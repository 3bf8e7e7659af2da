// Many cells at once: a table from a spreadsheet, and everyone right in a problem except some.

import { ask, csrfToken, find, get, refusal } from "./kit.js";

/** @typedef {import("./marking_cell.js").Seen} Seen */
/** @typedef {import("./marking_desk.js").Desk} Desk */

const label = get("column-label", HTMLSelectElement);
const wrong = get("column-wrong", HTMLInputElement);

/**
 * Whether a pasted text is a table and not one answer: several lines or columns.
 * @param {string} text
 * @param {boolean} editing whether an answer is being typed: then commas belong to it
 */
export const isTable = (text, editing) => /[\t\n\r]/.test(text.trim()) || (!editing && /[,;]/.test(text) && !/^\s*\d{1,3}(,\d{3})+\s*$/.test(text));

/**
 * Take a pasted table to the page that shows where each answer would go; one answer is left to the field.
 * @param {Desk} desk
 * @param {ClipboardEvent} event
 */
export async function paste(desk, event) {
  const cell = desk.grid.at(event);
  const text = event.clipboardData?.getData("text/plain") ?? "";
  if (!cell || !isTable(text, cell.editing)) return;
  event.preventDefault();
  desk.commit(desk.here);
  await desk.saving.rest();
  if (!desk.saving.idle) {
    desk.announce("Not pasted: some cells are not kept yet.");
    return;
  }
  const form = get("paste-form", HTMLFormElement);
  for (const [name, value] of Object.entries({ text, code: cell.code, label: cell.label, csrf_token: csrfToken() })) {
    find(form, `[name=${name}]`, HTMLInputElement).value = value;
  }
  form.submit();
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
