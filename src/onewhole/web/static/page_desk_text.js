// What is typed: its lines, and its steps, each of which can be undone. The field tells "changed" of every change.

import { calmly, get, say } from "./kit.js";

export const typed = get("typed", HTMLTextAreaElement);

const undo = get("undo", HTMLButtonElement);
const redo = get("redo", HTMLButtonElement);
const states = [{ text: typed.value, caret: 0 }];
let state = 0;

export const lines = () => typed.value.split("\n");

/** The number of the line that the caret stands on, from 1. */
export const lineNow = () => typed.value.slice(0, typed.selectionStart).split("\n").length;

/** Put another text on the desk, as one step that can be undone; the caret goes to the start of a line. @param {string} text */
export function put(text, line = lineNow()) {
  remember();
  typed.value = text;
  const start = text.split("\n").slice(0, line - 1).join("\n").length;
  const caret = Math.min(text.length, start + (line > 1 ? 1 : 0));
  typed.setSelectionRange(caret, caret);
  remember();
  changed();
}

/** Let earlier texts, the oldest first, stand before what is typed: undo leads back to them. @param {string[]} texts */
export function standBefore(texts) {
  states.splice(0, states.length, ...texts.map((text) => ({ text, caret: 0 })));
  state = states.length - 1;
  remember();
}

function changed() {
  typed.dispatchEvent(new Event("changed"));
}

function remember() {
  if (states[state].text === typed.value) return;
  states.splice(++state, states.length, { text: typed.value, caret: typed.selectionStart });
  if (states.length > 500) { states.shift(); state--; }
  showUndo();
}

function showUndo() {
  undo.setAttribute("aria-disabled", String(state === 0));
  redo.setAttribute("aria-disabled", String(state === states.length - 1));
}

/** @param {number} step */
function go(step) {
  remember();
  const to = state + step;
  if (to < 0 || to >= states.length) {
    say(step < 0 ? "There is nothing to undo." : "There is nothing to redo.");
    return;
  }
  state = to;
  typed.value = states[state].text;
  typed.setSelectionRange(states[state].caret, states[state].caret);
  showUndo();
  changed();
  say(step < 0 ? "Undone." : "Done again.");
}

const rememberSoon = calmly(remember, 400);
typed.addEventListener("input", () => { changed(); rememberSoon(); });
typed.addEventListener("beforeinput", (event) => {
  if (event.inputType === "historyUndo" || event.inputType === "historyRedo") {
    event.preventDefault();
    go(event.inputType === "historyUndo" ? -1 : 1);
  }
});
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey)) return;
  if (event.target instanceof Element && event.target.matches("input, select")) return;
  const key = event.key.toLowerCase();
  if (key === "z") { event.preventDefault(); go(event.shiftKey ? 1 : -1); }
  if (key === "y") { event.preventDefault(); go(1); }
});
undo.addEventListener("click", () => go(-1));
redo.addEventListener("click", () => go(1));
undo.disabled = false;
redo.disabled = false;
showUndo();
