// The order of the problems: moved by dragging, by the arrows, or with Alt and the arrows in the field.

import { around, ask, find, get, make, say } from "./kit.js";
import { act } from "./page_desk_notes.js";
import { trying } from "./page_desk_refused.js";
import { lineNow, put, typed } from "./page_desk_text.js";

const order = get("order");
const desk = get("desk");
/** A problem that stands on the page. @typedef {{ label: string, asks: string, room: string, remedies: import("./page_desk_notes.js").Remedy[] }} Stands */
/** @type {Record<string, number | undefined>} */
const STEPS = { ArrowUp: -1, ArrowDown: 1 };

/** How far an arrow moves a problem. @type {Record<string, string | undefined>} */
const BY = { up: "-1", down: "1" };

/** Show the problems with their rooms; what has the focus keeps it. @param {Stands[]} problems */
export function drawOrder(problems) {
  const focused = /** @type {HTMLElement | null} */ (document.activeElement)?.dataset.does;
  const place = [...order.children].findIndex((row) => row.contains(document.activeElement));
  order.replaceChildren(...problems.map((one, index) => make("li", { "data-label": one.label },
    button("drag", "⠿", `Move problem ${one.label}: drag, or arrows up and down`),
    make("span", { class: "what" }, `${one.label}. ${one.asks}`, make("span", { class: "quiet" }, one.room)),
    button("up", "↑", `Problem ${one.label} up`, index === 0),
    button("down", "↓", `Problem ${one.label} down`, index === problems.length - 1),
    make("div", { class: "words" }, ...one.remedies.map(offered)))));
  if (focused && place >= 0) focus(place, focused);
}

/** A button for what one click may do about a problem's words. @param {import("./page_desk_notes.js").Remedy} remedy */
function offered(remedy) {
  const made = make("button", { type: "button", class: "small", "data-does": "words" }, remedy.words);
  made.addEventListener("click", () => act(remedy, () => undefined));
  return made;
}

/** @param {string} does @param {string} sign @param {string} words */
function button(does, sign, words, off = false) {
  const name = does === "drag" ? "handle" : "arrow";
  return make("button", { type: "button", class: name, "data-does": does, "aria-label": words, "aria-disabled": String(off) }, sign);
}

/** @param {number} place @param {string} does */
function focus(place, does) {
  const row = order.children[Math.min(place, order.children.length - 1)];
  if (row) find(row, `[data-does="${does}"]`).focus();
}

/**
 * Move a problem by a step or to a place; the focus, or the caret, goes with it. The server knows what a problem is.
 * @param {Record<string, string>} which its label or its line
 * @param {Record<string, string>} fields
 * @param {string | null} [does] the button that keeps the focus
 */
async function move(which, fields, does = null) {
  await trying(async () => {
    const now = await ask(desk.dataset.toMoved ?? "", { typed: typed.value, ...which, ...fields });
    if (now.place) put(now.typed, does ? lineNow() : now.line);
    say(now.words);
    if (now.place && does) focus(now.place - 1, does);
  });
}

/** @param {Event} event */
const labelAt = (event) => around(event, "li")?.dataset.label ?? "";

order.addEventListener("click", (event) => {
  const pressed = around(event, "button");
  const does = pressed?.dataset.does ?? "drag";
  if (!(does in BY) || pressed?.getAttribute("aria-disabled") === "true") return;
  move({ label: labelAt(event) }, { by: BY[does] ?? "1" }, does);
});
order.addEventListener("keydown", (event) => {
  const step = STEPS[event.key];
  const does = around(event, "[data-does]")?.dataset.does;
  if (!step || !does || does === "words") return;
  event.preventDefault();
  move({ label: labelAt(event) }, { by: String(step) }, does);
});
typed.addEventListener("keydown", (event) => {
  const step = STEPS[event.key];
  if (!event.altKey || !step) return;
  event.preventDefault();
  move({ line: String(lineNow()) }, { by: String(step) });
});

// Dragging ----------------------------------------------------------------------------------------------------

/** @type {HTMLElement | null} */
let lifted = null;
/** @type {HTMLElement | null} */
let aim = null;
const rows = () => /** @type {HTMLElement[]} */ ([...order.children]);
const unmark = () => rows().forEach((row) => row.classList.remove("over-me", "under-me"));

order.addEventListener("pointerdown", (event) => {
  const handle = around(event, ".handle");
  lifted = handle?.closest("li") ?? null;
  if (!handle || !lifted) return;
  lifted.classList.add("lifted");
  handle.setPointerCapture(event.pointerId);
});
order.addEventListener("pointermove", (event) => {
  if (!lifted) return;
  unmark();
  aim = rows().find((row) => event.clientY < row.getBoundingClientRect().bottom) ?? rows().at(-1) ?? lifted;
  const before = rows().indexOf(aim) <= rows().indexOf(lifted);
  if (aim !== lifted) aim.classList.add(before ? "over-me" : "under-me");
});
order.addEventListener("pointerup", () => drop(true));
order.addEventListener("pointercancel", () => drop(false));

/** @param {boolean} moves */
function drop(moves) {
  if (!lifted) return;
  const from = lifted;
  unmark();
  from.classList.remove("lifted");
  if (moves && aim && aim !== from) move({ label: from.dataset.label ?? "" }, { to: String(rows().indexOf(aim) + 1) }, "drag");
  lifted = null;
  aim = null;
}
