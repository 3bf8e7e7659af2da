// The notes in the margin: the three that matter most, each beside its problem, with what can be done about it in one click.

import { all, ask, calmly, get, make, say } from "./kit.js";
import { large, trying } from "./page_desk_refused.js";
import { goTo, rowOf } from "./page_desk_rows.js";
import { lineNow, put, typed } from "./page_desk_text.js";

/** What one click may do. @typedef {{ act: string, words: string, labels: string[], values: string[] }} Remedy */
/** A line, and what stands there. @typedef {{ line: number, name: string }} Place */
/** @typedef {{ line: number | null, column: number | null, what: string, remedy: string, story: boolean, places: Place[], remedies: Remedy[] }} Mistake */
/** @typedef {{ advice: boolean, words: string, remedy: string, known: string, places: Place[], remedies: Remedy[] }} Note */
/** A page laid out. @typedef {{ mistakes: Mistake[], notes: Note[], counted: Place[], told: string }} Found */
/** What stands in the margin. @typedef {{ sort: string, words: string, remedy: string, known: string, places: Place[], remedies: Remedy[], column: number | null }} Drawn */

/** So many notes are in view; the others are folded. */
const MOST = 3;
/** So many problems of a note are named. */
const NAMED = 4;

const notes = get("notes");
const folded = get("folded");
const more = get("more-notes");
const heard = get("heard");
const desk = get("desk");

/** The notes on a page, those that are advice first. @param {Found} found */
const weighed = (found) => [...found.notes].sort((one, other) => Number(other.advice) - Number(one.advice));

/** The notes that stand in view, after what cannot be read. @param {Found} found */
export const inView = (found) => weighed(found).slice(0, Math.max(0, MOST - found.mistakes.length));

/** Show what was found in the text. @param {Found} found */
export function drawNotes(found) {
  /** @type {Drawn[]} */
  const every = [
    ...found.mistakes.map((one) => ({ ...one, sort: one.story ? "A story" : "Cannot be read", words: `${one.what}.`, known: "" })),
    ...weighed(found).map((one) => ({ ...one, sort: one.advice ? "Advice" : "Note", column: null })),
  ];
  notes.replaceChildren(...inOrder(every.slice(0, MOST)).map(drawn));
  folded.replaceChildren(...inOrder(every.slice(MOST)).map(drawn));
  more.hidden = every.length <= MOST;
  get("how-many-more").textContent = every.length === MOST + 1 ? "1 more" : `${every.length - MOST} more`;
  if (!every.length && found.told) notes.append(make("li", { class: "none" }, "Nothing to note: this page is ready."));
  place();
  hear(found);
}

/** Down the page, what is about the whole of it first. @param {Drawn[]} some */
const inOrder = (some) => [...some].sort((one, other) => (one.places[0]?.line ?? 0) - (other.places[0]?.line ?? 0));

/** @param {Drawn} note */
function drawn(note) {
  const where = make("p", { class: "where" }, make("span", { class: "sort" }, note.sort));
  if (!note.places.length) where.append(make("span", {}, "The whole page"));
  for (const { line, name } of note.places.slice(0, NAMED)) {
    const goes = make("a", { href: "#typed" }, name);
    goes.addEventListener("click", (event) => { event.preventDefault(); goTo(line, note.column); });
    where.append(goes);
  }
  if (note.places.length > NAMED) where.append(make("span", {}, `and ${note.places.length - NAMED} more`));
  const made = make("li", { "data-lines": note.places.map(({ line }) => line).join(" ") }, where, make("p", {}, large(note.words)));
  if (note.remedy) made.append(make("p", { class: "quiet" }, note.remedy));
  const buttons = note.remedies.map((remedy) => {
    const button = make("button", { type: "button", class: remedy.act === "story" ? "small reading" : "small" }, remedy.words);
    button.addEventListener("click", () => remedied(remedy, note));
    return button;
  });
  if (buttons.length) made.append(make("div", { class: "row" }, ...buttons));
  if (note.known) made.append(make("details", {}, make("summary", {}, "How this is known"), make("p", { class: "quiet" }, note.known)));
  return made;
}

/** @param {Remedy} remedy @param {Drawn} note */
async function remedied(remedy, note) {
  if (remedy.act === "go") {
    goTo(note.places[0]?.line ?? 1);
    return;
  }
  await act(remedy, () => get("notes-head").focus());
}

/** Do what a remedy offers, and say what was done. @param {Remedy} remedy @param {() => void} then */
export async function act(remedy, then) {
  const fields = new FormData();
  fields.append("typed", typed.value);
  fields.append("act", remedy.act);
  for (const label of remedy.labels) fields.append("label", label);
  for (const value of remedy.values) fields.append("value", value);
  await trying(async () => {
    const now = await ask(desk.dataset.toMended ?? "", fields);
    put(now.typed);
    then();
    say(now.words);
  });
}

/** Set each note in view beside its first line, or under the note before it. */
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
  const wrong = found.mistakes.map((one) => `${one.places[0] ? `${one.places[0].name}: ` : ""}${one.what}. ${one.remedy}`);
  const many = found.notes.length === 1 ? "1 note" : `${found.notes.length} notes`;
  const first = found.notes[0] ? ` ${found.notes[0].words}` : "";
  const words = wrong.length ? wrong.join(" ") : found.told && `${found.told} ${many}.${first}`;
  if (heard.textContent !== words) heard.textContent = words;
}, 700);

document.addEventListener("selectionchange", () => {
  if (document.activeElement !== typed) return;
  const line = String(lineNow());
  for (const note of all(document, ".notes li")) note.classList.toggle("here", (note.dataset.lines ?? "").split(" ").includes(line));
});
addEventListener("resize", calmly(place, 100));
document.fonts.ready.then(place);
