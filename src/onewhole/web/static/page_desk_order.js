// The order of the problems: moved by dragging, by the arrows, or with Alt and the arrows in the field.

import { ask, make, say } from "./kit.js";
import { trying } from "./page_desk_refused.js";
import { lineNow, problemLines, put, typed } from "./page_desk_text.js";

const order = document.getElementById("order");
const { at } = document.getElementById("desk").dataset;
const STEPS = { ArrowUp: -1, ArrowDown: 1 };

/** Show the problems with their rooms; what has the focus keeps it. */
export function drawOrder(problems) {
  const focused = document.activeElement?.dataset?.does;
  const place = [...order.children].findIndex((row) => row.contains(document.activeElement));
  order.replaceChildren(...problems.map((one, index) => make("li", { "data-label": one.label },
    button("drag", "⠿", `Move problem ${one.label}: drag, or arrows up and down`),
    make("span", { class: "what" }, `${one.label}. ${one.asks}`, make("span", { class: "quiet" }, one.room)),
    button("up", "↑", `Problem ${one.label} up`, index === 0),
    button("down", "↓", `Problem ${one.label} down`, index === problems.length - 1))));
  if (focused && place >= 0) focus(place, focused);
}

function button(does, sign, words, off = false) {
  const name = does === "drag" ? "handle" : "arrow";
  return make("button", { type: "button", class: name, "data-does": does, "aria-label": words, "aria-disabled": off }, sign);
}

function focus(place, does) {
  order.children[Math.min(place, order.children.length - 1)]?.querySelector(`[data-does="${does}"]`)?.focus();
}

/** Move a problem by steps or to a place; the focus, or the caret, goes with it. */
async function move(label, fields, does = null) {
  const index = problemLines().findIndex((one) => one.label === label);
  await trying(async () => {
    const now = await ask(`${at}/moved`, { typed: typed.value, label, ...fields });
    const places = problemLines();
    const wanted = Number(fields.to ?? index + 1 + Number(fields.by));
    const to = Math.max(1, Math.min(wanted, places.length)) - 1;
    put(now.typed, does ? lineNow() : places[to]?.line);
    say(now.words);
    if (does) focus(to, does);
  });
}

order.addEventListener("click", (event) => {
  const pressed = event.target.closest("button");
  if (!pressed || pressed.dataset.does === "drag" || pressed.getAttribute("aria-disabled") === "true") return;
  move(pressed.closest("li").dataset.label, { by: pressed.dataset.does === "up" ? -1 : 1 }, pressed.dataset.does);
});
order.addEventListener("keydown", (event) => {
  const step = STEPS[event.key];
  const row = event.target.closest("li");
  if (!step || !row) return;
  event.preventDefault();
  move(row.dataset.label, { by: step }, event.target.dataset.does);
});
typed.addEventListener("keydown", (event) => {
  const step = STEPS[event.key];
  if (!event.altKey || !step) return;
  event.preventDefault();
  const line = lineNow();
  const label = problemLines().find((one) => one.line === line)?.label;
  if (label) move(label, { by: step });
  else say("There is no problem on this line.");
});

// Dragging ----------------------------------------------------------------------------------------------------

let lifted = null;
let aim = null;
const rows = () => [...order.children];
const unmark = () => rows().forEach((row) => row.classList.remove("over-me", "under-me"));

order.addEventListener("pointerdown", (event) => {
  const handle = event.target.closest(".handle");
  if (!handle) return;
  lifted = handle.closest("li");
  lifted.classList.add("lifted");
  handle.setPointerCapture(event.pointerId);
});
order.addEventListener("pointermove", (event) => {
  if (!lifted) return;
  unmark();
  aim = rows().find((row) => event.clientY < row.getBoundingClientRect().bottom) ?? order.lastElementChild;
  const before = rows().indexOf(aim) <= rows().indexOf(lifted);
  if (aim !== lifted) aim.classList.add(before ? "over-me" : "under-me");
});
order.addEventListener("pointerup", () => drop(true));
order.addEventListener("pointercancel", () => drop(false));

function drop(moves) {
  if (!lifted) return;
  const from = lifted;
  unmark();
  from.classList.remove("lifted");
  if (moves && aim && aim !== from) move(from.dataset.label, { to: rows().indexOf(aim) + 1 }, "drag");
  lifted = null;
  aim = null;
}
