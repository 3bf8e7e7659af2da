// The notes in the margin: each beside its line, with what can be done about it in one click.

import { all, ask, calmly, get, make, say } from "./kit.js";
import { large, trying } from "./page_desk_refused.js";
import { goTo, rowOf } from "./page_desk_rows.js";
import { lineNow, put, typed } from "./page_desk_text.js";

/** What one click may do. @typedef {{ act: string, words: string, labels: string[], values: string[] }} Remedy */
/** @typedef {{ line: number | null, column: number | null, what: string, remedy: string, remedies: Remedy[] }} Mistake */
/** @typedef {{ advice: boolean, words: string, remedy: string, lines: number[], remedies: Remedy[] }} Note */
/** A page laid out. @typedef {{ mistakes: Mistake[], notes: Note[], told: string }} Found */
/** What stands in the margin. @typedef {{ sort: string, words: string, remedy: string, lines: number[], remedies: Remedy[], column?: number | null, what?: string }} Drawn */

const notes = get("notes");
const heard = get("heard");
const desk = get("desk");

/** Show what was found in the text. @param {Found} found */
export function drawNotes(found) {
  /** @type {Drawn[]} */
  const mistakes = [];
  for (const one of found.mistakes) {
    const same = one.remedies.length > 0 && mistakes.find((other) => other.what === one.what);
    if (same) same.lines.push(one.line ?? 0);
    else mistakes.push({ ...one, sort: "Cannot be read", lines: one.line ? [one.line] : [], words: `${one.what}.` });
  }
  /** @type {Drawn[]} */
  const rest = found.notes.map((one) => ({ ...one, sort: one.advice ? "Advice" : "Note" }));
  const every = [...mistakes, ...rest].sort((one, other) => (one.lines[0] ?? 0) - (other.lines[0] ?? 0));
  notes.replaceChildren(...every.map(drawn));
  if (!every.length && found.told) notes.append(make("li", { class: "none" }, "Nothing to note: this page is ready."));
  place();
  hear(found);
}

/** @param {Drawn} note */
function drawn(note) {
  const where = make("p", { class: "where" }, make("span", { class: "sort" }, note.sort));
  if (!note.lines.length) where.append(make("span", {}, "the whole page"));
  for (const line of note.lines.slice(0, 4)) {
    const goes = make("a", { href: "#typed" }, `line ${line}`);
    goes.addEventListener("click", (event) => { event.preventDefault(); goTo(line, note.column); });
    where.append(goes);
  }
  if (note.lines.length > 4) where.append(make("span", {}, `and ${note.lines.length - 4} more`));
  const words = [make("p", {}, large(note.words)), make("p", { class: "quiet" }, note.remedy)];
  const made = make("li", { "data-lines": note.lines.join(" ") }, where, ...words);
  const buttons = note.remedies.map((remedy) => {
    const button = make("button", { type: "button", class: "small" }, remedy.words);
    button.addEventListener("click", () => remedied(remedy, note));
    return button;
  });
  if (buttons.length) made.append(make("div", { class: "row" }, ...buttons));
  return made;
}

/** @param {Remedy} remedy @param {Drawn} note */
async function remedied(remedy, note) {
  if (remedy.act === "go") {
    goTo(note.lines[0] ?? 1);
    return;
  }
  const fields = new FormData();
  fields.append("typed", typed.value);
  fields.append("act", remedy.act);
  for (const label of remedy.labels) fields.append("label", label);
  for (const value of remedy.values) fields.append("value", value);
  await trying(async () => {
    const now = await ask(desk.dataset.toMended ?? "", fields);
    put(now.typed);
    get("notes-head").focus();
    say(now.words);
  });
}

/** Set each note beside its first line, or under the note before it. */
function place() {
  const beside = matchMedia("(min-width: 70.01rem)").matches;
  let free = notes.getBoundingClientRect().top;
  for (const note of all(notes, ":scope > li")) {
    note.style.marginTop = "";
    const row = rowOf(Number(note.dataset.lines?.split(" ")[0]));
    if (beside && row) {
      const gap = row.getBoundingClientRect().top - free;
      if (gap > 0) note.style.marginTop = `${gap}px`;
    }
    free = note.getBoundingClientRect().bottom + parseFloat(getComputedStyle(note).marginBottom);
  }
}

/** Read aloud what was found, once the typing rests. */
const hear = calmly((/** @type {Found} */ found) => {
  const wrong = found.mistakes.map((one) => `${one.line ? `Line ${one.line}: ` : ""}${one.what}. ${one.remedy}`);
  const many = found.notes.length === 1 ? "1 note" : `${found.notes.length} notes`;
  const first = found.notes[0] ? ` ${found.notes[0].words}` : "";
  const words = wrong.length ? wrong.join(" ") : found.told && `${found.told} ${many}.${first}`;
  if (heard.textContent !== words) heard.textContent = words;
}, 700);

document.addEventListener("selectionchange", () => {
  if (document.activeElement !== typed) return;
  const line = String(lineNow());
  for (const note of all(notes, ":scope > li")) note.classList.toggle("here", (note.dataset.lines ?? "").split(" ").includes(line));
});
addEventListener("resize", calmly(place, 100));
document.fonts.ready.then(place);
