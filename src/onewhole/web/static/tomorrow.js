// Tomorrow: a pupil is moved by drag, by the form under "Move", or by the arrow keys on it; what the page tells
// always comes from the server.

import { Refused, all, around, ask, find, get, loaded, refusal, say } from "./kit.js";

const place = get("tomorrow");
/** @type {{ code: string, key: string, shown: string }[]} */
const moves = []; // what undoes each move of this window, the last one last
let busy = false;

const seatOf = (/** @type {string} */ code) => find(place, `[data-code="${CSS.escape(code)}"]`);
const handleOf = (/** @type {HTMLElement} */ seat) => find(seat, ".move summary");

/** Load the page again behind the scenes and put it in the place of this one; what was open stays open. */
async function renew() {
  const fresh = (await loaded(location.pathname))?.page.getElementById("tomorrow");
  if (!fresh) {
    location.reload();
    return;
  }
  for (const open of all(place, "details[id][open]")) {
    fresh.querySelector(`#${CSS.escape(open.id)}`)?.setAttribute("open", "");
  }
  place.replaceChildren(...fresh.childNodes);
  Object.assign(place.dataset, { saw: fresh.dataset.saw ?? "", seen: fresh.dataset.seen ?? "" });
  showUndo();
}

function showUndo() {
  const button = document.getElementById("undo");
  if (!button) return;
  button.hidden = moves.length === 0;
  const last = moves.at(-1);
  if (last) button.textContent = `Undo: ${last.shown} back`;
}

/**
 * Move a pupil; `undoing` says that this move undoes another one and need not be undone itself.
 * @param {string} code
 * @param {string} key
 * @param {boolean} [undoing]
 * @param {string} [stays] "yes" keeps the pupil there on later nights too
 */
async function move(code, key, undoing = false, stays = "") {
  if (busy) return;
  busy = true;
  const shown = seatOf(code).dataset.shown ?? code;
  try {
    const saw = seatOf(code).dataset.saw ?? "";
    const told = await ask(place.dataset.move ?? "", { code, key, saw, stays, script: "yes" });
    if (!undoing) moves.push({ code, key: told.undo, shown });
    await renew();
    const seat = seatOf(code);
    seat.classList.add("now");
    handleOf(seat).focus();
    seat.scrollIntoView({ block: "nearest" });
    say(told.said);
  } catch (error) {
    if (error instanceof Refused && error.told.stands !== undefined) await renew();
    say(error instanceof Error ? error.message : String(error));
  } finally {
    busy = false;
  }
}

/** On a narrow window the pupils of a group are in view on demand; on a wide one always. */
const narrow = matchMedia("(max-width: 40rem)");
function fold() {
  for (const one of all(place, "details.sits")) one.toggleAttribute("open", !narrow.matches);
}

const takers = () => all(place, ".card[data-key]");

/**
 * Move a pupil to the group before (-1) or after (1) the own one.
 * @param {HTMLElement} seat
 * @param {number} by
 */
function step(seat, by) {
  const cards = takers();
  const at = cards.findIndex((card) => card.contains(seat));
  const to = at < 0 ? (by > 0 ? 0 : cards.length - 1) : at + by;
  if (to < 0 || to >= cards.length) say(`There is no group ${by < 0 ? "before" : "after"} this one.`);
  else move(seat.dataset.code ?? "", cards[to].dataset.key ?? "");
}

place.addEventListener("submit", (event) => {
  const form = around(event, ".move form");
  if (!(form instanceof HTMLFormElement)) return;
  event.preventDefault();
  const fields = new FormData(form);
  move(String(fields.get("code")), String(fields.get("key")), false, String(fields.get("stays") ?? ""));
});

place.addEventListener("keydown", (event) => {
  const seat = around(event, ".move summary")?.closest(".seat");
  if (seat instanceof HTMLElement && ["ArrowLeft", "ArrowRight"].includes(event.key)) {
    event.preventDefault();
    step(seat, event.key === "ArrowLeft" ? -1 : 1);
  }
  const open = around(event, ".move[open]");
  if (open instanceof HTMLDetailsElement && event.key === "Escape") {
    open.open = false;
    find(open, "summary").focus();
  }
});

place.addEventListener("click", (event) => {
  const last = around(event, "#undo") && !busy ? moves.pop() : undefined;
  if (last) move(last.code, last.key, true);
});

/** @type {HTMLElement | null} */
let dragged = null;
place.addEventListener("dragstart", (event) => {
  dragged = around(event, ".seat");
  if (!dragged || !event.dataTransfer) return;
  event.dataTransfer.effectAllowed = "move";
  event.dataTransfer.setData("text/plain", dragged.dataset.code ?? "");
  dragged.classList.add("dragged");
});
place.addEventListener("dragover", (event) => {
  const card = around(event, ".card[data-key]");
  for (const other of takers()) other.classList.toggle("over", other === card && dragged !== null);
  if (card && dragged) event.preventDefault();
});
place.addEventListener("drop", (event) => {
  const card = around(event, ".card[data-key]");
  if (!card || !dragged) return;
  event.preventDefault();
  if (!card.contains(dragged)) move(dragged.dataset.code ?? "", card.dataset.key ?? "");
});
place.addEventListener("dragend", () => {
  dragged?.classList.remove("dragged");
  dragged = null;
  for (const card of takers()) card.classList.remove("over");
});

/** Groups that are looked at are kept, so that a late paper moves nobody: once the page is in front of somebody. */
async function keepSeen() {
  const { seen, saw } = place.dataset;
  if (document.visibilityState !== "visible" || !seen || !saw) return;
  place.dataset.seen = "";
  try {
    await ask(seen, { saw, script: "yes" });
  } catch (error) {
    if (refusal(error).status === 422) await renew(); // other groups by now: these are looked at next
  }
}

narrow.addEventListener("change", fold);
if (narrow.matches && !location.hash.startsWith("#seat-")) fold();
document.addEventListener("visibilitychange", keepSeen);
keepSeen();
