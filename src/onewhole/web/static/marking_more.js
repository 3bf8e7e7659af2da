// More on the cell one is in: what patterns would write, what was written there, how it is to be read.

import { ask, get, make, refusal } from "./kit.js";
import { whose } from "./marking_desk.js";

/** @typedef {import("./marking_cell.js").Cell} Cell */
/** @typedef {import("./marking_cell.js").Judged} Judged */
/** @typedef {import("./marking_desk.js").Desk} Desk */
/** @typedef {import("./marking_desk.js").Predicted} Predicted */
/** @typedef {{ text: string, when: string, by: string }} Writing */

const details = get("more", HTMLDetailsElement);
const read = get("read", HTMLInputElement);

/** @param {Desk} desk */
async function more(desk) {
  if (!details.open) return;
  const cell = desk.here;
  try {
    const written = `${desk.to("written")}?${new URLSearchParams({ code: cell.code, label: cell.label })}`;
    const [predicted, past] = await Promise.all([desk.predictions(cell), ask(written)]);
    if (cell !== desk.here) return;
    get("predicted").replaceChildren(...predicted.map((one) => prediction(desk, cell, one)));
    const rows = /** @type {Writing[]} */ (past.writings).map(({ text, when, by }) => make("li", {}, text ? `“${text}”` : "cleared", `, ${when}, ${by}`));
    get("history").replaceChildren(...(rows.length ? rows : [make("li", {}, "Nothing yet.")]));
  } catch (error) {
    desk.announce(refusal(error).message);
  }
}

/**
 * @param {Desk} desk
 * @param {Cell} cell
 * @param {Predicted} one
 */
function prediction(desk, cell, one) {
  const [id, name, text] = one;
  const take = make("button", { type: "button", class: "small" }, text);
  take.addEventListener("click", () => {
    cell.input.focus();
    desk.type(cell, text, whose(one));
  });
  return make("li", {}, take, ` ${name} (${id})`);
}

/** @param {Desk} desk */
async function readAs(desk) {
  const cell = desk.here;
  await desk.saving.rest();
  try {
    /** @type {{ judged: Judged, readAs: string | null, read: string }} */
    const found = await ask(desk.to("readAs"), { code: cell.code, label: cell.label, typed: cell.text, read: read.value, saw: cell.readAs ?? cell.text });
    cell.show(found.judged, cell.text, found);
    read.value = "";
    cell.input.focus();
    desk.tell();
  } catch (error) {
    const { message, told } = refusal(error);
    if (told.stands !== undefined) cell.readAs = told.stands; // sent once more, it is kept
    desk.announce(message);
  }
}

/** @param {Desk} desk */
export function listenToMore(desk) {
  desk.told = () => { more(desk); };
  details.addEventListener("toggle", desk.told);
  get("read-as", HTMLFormElement).addEventListener("submit", (event) => {
    event.preventDefault();
    readAs(desk);
  });
}
