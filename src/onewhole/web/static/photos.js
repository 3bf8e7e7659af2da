// Answers on paper are looked at one after another: a key, and the next one is there.

import { all, ask, find, fragment, get, refusal, say } from "./kit.js";
import { listenToDrops } from "./photos_drop.js";
import { photoAct } from "./photos_keys.js";
import { tickSpot } from "./photos_spot.js";

/** @typedef {{ row: string, left: number, ahead: string[], told?: string }} Next */
/** @typedef {{ code: string, label: string }} Place */

const cells = document.getElementById("cells");
/** What was checked here, the last one last, so that it can be taken back. @type {Place[]} */
const done = [];
let isSending = false;

const cell = () => document.getElementById("cell");

/** Load the pictures that come next. @param {string[]} addresses */
function loadAhead(addresses) {
  for (const address of addresses) new Image().src = address;
}

/** @param {number} left */
function count(left) {
  const told = get("count");
  if (told.firstChild) told.firstChild.textContent = left === 1 ? "1 answer to look at" : `${left} answers to look at`;
}

/** Show what comes next; once nothing waits, the page is loaded anew with what is left to do. @param {Next} next */
function show(next) {
  if (!cells) return;
  count(next.left);
  loadAhead(next.ahead);
  if (!next.row) {
    location.reload();
    return;
  }
  cells.replaceChildren(fragment(next.row));
  listenToCell();
  get("last").textContent = next.told ?? "";
}

/** @param {string} address @param {Record<string, string>} fields @param {(next: Next) => void} then */
async function sent(address, fields, then) {
  if (isSending) return;
  isSending = true;
  try {
    const next = await ask(address, fields);
    then(next);
    show(next);
  } catch (error) {
    say(refusal(error).message);
  } finally {
    isSending = false;
  }
}

/** @param {SubmitEvent} event */
function check(event) {
  event.preventDefault();
  const form = /** @type {HTMLFormElement} */ (event.target);
  const { code = "", label = "", saw = "", text = "" } = /** @type {Record<string, string>} */ (
    Object.fromEntries(new FormData(form, event.submitter)));
  sent(form.dataset.checked ?? "", { code, label, saw, text }, () => { done.push({ code, label }); });
}

function back() {
  const last = done.at(-1);
  if (!cells || !last) return;
  const { code, label } = last;
  sent(cells.dataset.unchecked ?? "", { code, label }, () => { done.pop(); });
}

function listenToCell() {
  const here = cell();
  if (!here) return;
  for (const form of all(here, "form")) form.addEventListener("submit", /** @type {EventListener} */ (check));
  here.focus({ preventScroll: true });
}

/** @type {Record<import("./photos_keys.js").PhotoAct, (here: HTMLElement, key: string) => void>} */
const ACTS = {
  choose: (here, key) => { find(here, `[data-key="${key}"]`, HTMLButtonElement).click(); },
  type: () => { get("cell-text", HTMLInputElement).focus(); },
  leave: (here) => { here.focus(); },
  back,
};

/** What the keyboard is on, as `photoAct` asks it. */
function place() {
  const at = document.activeElement;
  const here = cell();
  return {
    typing: at instanceof HTMLInputElement && !["checkbox", "radio", "file"].includes(at.type),
    onControl: Boolean(at?.matches("button, a, summary")),
    choices: here ? all(here, ".choices button").length - 1 : 9,
  };
}

/** @param {KeyboardEvent} event */
function act(event) {
  const found = photoAct(event, place());
  if (!found) return;
  const here = cell();
  if (here) ACTS[found](here, event.key);
  else if (found === "back") back();
  else if (found !== "choose" || !tickSpot(event.key)) return;
  event.preventDefault();
}

listenToDrops(get("send", HTMLFormElement), get("pictures", HTMLInputElement));
if (cells) {
  document.addEventListener("keydown", act);
  loadAhead((cell()?.dataset.ahead ?? "").split(" ").filter(Boolean));
  listenToCell();
}
