// Tomorrow: a pupil is moved by drag, by the form under "Move", or by the arrow keys on it; what the page tells
// always comes from the server.

import { ask, say } from "./kit.js";

const place = document.getElementById("tomorrow");
const moves = []; // what undoes each move of this window, the last one last
let busy = false;

const seatOf = (code) => place.querySelector(`[data-code="${CSS.escape(code)}"]`);
const handleOf = (seat) => seat.querySelector(".move summary");

/** Load the page again behind the scenes and put it in the place of this one; what was open stays open. */
async function renew() {
  const answer = await fetch(location.pathname, { credentials: "same-origin" });
  const fresh = new DOMParser().parseFromString(await answer.text(), "text/html").getElementById("tomorrow");
  if (!fresh) {
    location.reload();
    return;
  }
  for (const open of place.querySelectorAll("details.talk[open]")) {
    const again = fresh.querySelector(`#${CSS.escape(open.id)}`);
    if (again) again.open = true;
  }
  place.replaceChildren(...fresh.childNodes);
  showUndo();
}

function showUndo() {
  const button = place.querySelector("#undo");
  if (!button) return;
  button.hidden = moves.length === 0;
  if (moves.length) button.textContent = `Undo: ${moves.at(-1).shown} back`;
}

/** Move a pupil; `undoing` says that this move undoes another one and need not be undone itself. */
async function move(code, key, undoing = false) {
  if (busy) return;
  busy = true;
  const shown = seatOf(code).dataset.shown;
  try {
    const told = await ask(place.dataset.move, { code, key, script: "yes" });
    if (!undoing) moves.push({ code, key: told.undo, shown });
    await renew();
    const seat = seatOf(code);
    seat.classList.add("now");
    handleOf(seat).focus();
    seat.scrollIntoView({ block: "nearest" });
    say(told.said);
  } catch (refused) {
    say(refused.message);
  } finally {
    busy = false;
  }
}

const takers = () => [...place.querySelectorAll(".card[data-key]")];

/** Move a pupil to the group before (-1) or after (1) the own one. */
function step(seat, by) {
  const cards = takers();
  const at = cards.indexOf(seat.closest(".card"));
  const to = at < 0 ? (by > 0 ? 0 : cards.length - 1) : at + by;
  if (to < 0 || to >= cards.length) say(`There is no group ${by < 0 ? "before" : "after"} this one.`);
  else move(seat.dataset.code, cards[to].dataset.key);
}

place.addEventListener("submit", (event) => {
  const form = event.target.closest(".move form");
  if (!form) return;
  event.preventDefault();
  move(form.elements.code.value, form.elements.key.value);
});

place.addEventListener("keydown", (event) => {
  const handle = event.target.closest(".move summary");
  if (handle && ["ArrowLeft", "ArrowRight"].includes(event.key)) {
    event.preventDefault();
    step(handle.closest(".seat"), event.key === "ArrowLeft" ? -1 : 1);
  }
  const open = event.target.closest(".move[open]");
  if (open && event.key === "Escape") {
    open.open = false;
    open.querySelector("summary").focus();
  }
});

place.addEventListener("click", (event) => {
  if (event.target.closest("#undo") && moves.length && !busy) {
    const last = moves.pop();
    move(last.code, last.key, true);
  }
  const link = event.target.closest("a.to-talk");
  if (link) openTalk(link.hash);
});

let dragged = null;
place.addEventListener("dragstart", (event) => {
  dragged = event.target.closest?.(".seat") ?? null;
  if (!dragged) return;
  event.dataTransfer.effectAllowed = "move";
  event.dataTransfer.setData("text/plain", dragged.dataset.code);
  dragged.classList.add("dragged");
});
place.addEventListener("dragover", (event) => {
  const card = event.target.closest(".card[data-key]");
  for (const other of takers()) other.classList.toggle("over", other === card && dragged !== null);
  if (card && dragged) event.preventDefault();
});
place.addEventListener("drop", (event) => {
  const card = event.target.closest(".card[data-key]");
  if (!card || !dragged) return;
  event.preventDefault();
  if (!card.contains(dragged)) move(dragged.dataset.code, card.dataset.key);
});
place.addEventListener("dragend", () => {
  dragged?.classList.remove("dragged");
  dragged = null;
  for (const card of takers()) card.classList.remove("over");
});

/** Open the evidence that an address points at, and go there. */
function openTalk(hash) {
  const talk = hash.startsWith("#talk-") ? document.getElementById(decodeURIComponent(hash.slice(1))) : null;
  if (!talk) return;
  talk.open = true;
  talk.querySelector("summary").focus();
  talk.scrollIntoView({ block: "start" });
}

openTalk(location.hash);
