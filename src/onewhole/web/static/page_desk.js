// The desk: lines with their numbers and marks, the page laid out while one types, notes, order, undo.

import { ask, calmly, make, Refused, say } from "./kit.js";

const desk = document.getElementById("desk");
const typed = document.getElementById("typed");
const rows = document.getElementById("rows");
const notes = document.getElementById("notes");
const order = document.getElementById("order");
const pages = document.getElementById("pages");
const refused = document.getElementById("refused");
const at = desk.dataset.at;
const seal = document.querySelector('meta[name="seal"]').content;
const LABEL = /^\s*\(?([0-9]{1,3}[A-Za-z]?|[A-Za-z][0-9]{0,2})\s*(?:[.:]?\)[.:]?|:|\.)(?=\s|$)/;

let sheet = desk.dataset.sheet;
let keptText = typed.value;
let laid = null;

const by = (id) => document.getElementById(id);
const lines = () => typed.value.split("\n");

/** The number of the line that an offset of the text stands on, from 1. */
const lineAt = (offset) => typed.value.slice(0, offset).split("\n").length;

/** Begin with a capital. */
const large = (words) => words.charAt(0).toUpperCase() + words.slice(1);

/** Tell what was refused; nothing is lost. */
function tell(error) {
  if (error.name === "AbortError") return;
  if (!(error instanceof Refused)) throw error;
  const { where, refused: what, remedy } = error.told;
  const said = large(what.replace(/\.?$/, "."));
  refused.textContent = [where ? `${large(where)}: ${said}` : said, remedy].filter(Boolean).join(" ");
  refused.hidden = false;
}

/** Do something that the server may refuse. */
async function trying(run) {
  try {
    await run();
    refused.hidden = true;
  } catch (error) {
    tell(error);
  }
}

// Undo --------------------------------------------------------------------------------------------------------

const states = [{ text: typed.value, caret: 0 }];
let state = 0;

function remember() {
  if (states[state].text === typed.value) return;
  states.splice(++state, states.length, { text: typed.value, caret: typed.selectionStart });
  if (states.length > 500) { states.shift(); state--; }
  showUndo();
}

function showUndo() {
  by("undo").setAttribute("aria-disabled", state === 0);
  by("redo").setAttribute("aria-disabled", state === states.length - 1);
}

function go(step) {
  remember();
  const to = state + step;
  if (to < 0 || to >= states.length) return say(step < 0 ? "There is nothing to undo." : "There is nothing to redo.");
  state = to;
  typed.value = states[state].text;
  typed.setSelectionRange(states[state].caret, states[state].caret);
  showUndo();
  changed();
  say(step < 0 ? "Undone." : "Done again.");
}

/** Put another text on the desk, as one step that can be undone; the caret goes to the start of a line. */
function put(text, line = null) {
  remember();
  const before = lineAt(typed.selectionStart);
  typed.value = text;
  const start = text.split("\n").slice(0, (line ?? before) - 1).join("\n").length;
  const caret = Math.min(text.length, start + ((line ?? before) > 1 ? 1 : 0));
  typed.setSelectionRange(caret, caret);
  remember();
  changed();
}

// Lines and the page --------------------------------------------------------------------------------------------

function drawRows() {
  const texts = lines();
  while (rows.children.length > texts.length) rows.lastChild.remove();
  texts.forEach((text, index) => {
    const row = rows.children[index] ?? rows.appendChild(make("div"));
    if (row.textContent !== (text || "\u200b")) row.textContent = text || "\u200b";
  });
}

function mark() {
  const of = new Map();
  const set = (line, name) => { if (line && (!of.has(line) || name !== "note")) of.set(line, name); };
  for (const note of laid?.notes ?? []) for (const line of note.lines) set(line, note.advice ? "advice" : "note");
  for (const mistake of laid?.mistakes ?? []) set(mistake.line, "mistake");
  [...rows.children].forEach((row, index) => { row.className = of.get(index + 1) ?? ""; });
}

let asked = null;
async function look() {
  asked?.abort();
  asked = new AbortController();
  if (!typed.value.trim()) return show({ mistakes: [], notes: [], problems: [], pages: [], told: "" });
  try {
    show(await ask(`${at}/live`, { typed: typed.value }, { signal: asked.signal }));
  } catch (error) {
    tell(error);
  }
}
const lookSoon = calmly(look, 90);

function changed() {
  drawRows();
  lookSoon();
  keepDraft();
}

function show(found) {
  laid = found;
  mark();
  const wrong = found.mistakes.length;
  desk.classList.toggle("old", wrong > 0);
  if (!wrong) {
    drawPages(found.pages);
    drawOrder(found.problems);
  }
  const many = wrong === 1 ? "One thing cannot be read yet." : `${wrong} things cannot be read yet.`;
  const last = pages.children.length ? " This is the last page that could be read." : "";
  by("told").textContent = wrong ? many + last : found.told || "Type a problem, and the page is shown here.";
  drawNotes(found);
  hear(found);
}

function drawPages(found) {
  while (pages.children.length > found.length) pages.lastChild.remove();
  found.forEach((page, index) => {
    const figure = pages.children[index] ?? pages.appendChild(make("figure", {}, make("img")));
    const image = figure.firstChild;
    if (image.src !== page.picture) image.src = page.picture;
    image.alt = page.words;
  });
}

// Notes ---------------------------------------------------------------------------------------------------------

function drawNotes(found) {
  const mistakes = [];
  for (const one of found.mistakes) {
    const same = one.remedies.length && mistakes.find((other) => other.what === one.what);
    if (same) same.lines.push(one.line);
    else mistakes.push({ ...one, sort: "Cannot be read", lines: one.line ? [one.line] : [], words: `${one.what}.` });
  }
  const rest = found.notes.map((one) => ({ ...one, sort: one.advice ? "Advice" : "Note" }));
  const every = [...mistakes, ...rest].sort((one, other) => (one.lines[0] ?? 0) - (other.lines[0] ?? 0));
  notes.replaceChildren(...every.map(drawNote));
  if (!every.length && found.told) notes.append(make("li", { class: "none" }, "Nothing to note: this page is ready."));
  place();
}

function drawNote(note) {
  const where = make("p", { class: "where" }, make("span", { class: "sort" }, note.sort));
  if (!note.lines.length) where.append(make("span", {}, "the whole page"));
  for (const line of note.lines.slice(0, 4)) {
    const goes = make("a", { href: "#typed" }, `line ${line}`);
    goes.addEventListener("click", (event) => { event.preventDefault(); goTo(line, note.column); });
    where.append(goes);
  }
  if (note.lines.length > 4) where.append(make("span", {}, `and ${note.lines.length - 4} more`));
  const made = make("li", { "data-lines": note.lines.join(" ") }, where, make("p", {}, large(note.words)), make("p", { class: "quiet" }, note.remedy));
  const buttons = make("div", { class: "row" });
  for (const remedy of note.remedies ?? []) {
    const button = make("button", { type: "button", class: "small" }, remedy.words);
    button.addEventListener("click", () => remedied(remedy, note));
    buttons.append(button);
  }
  if (buttons.children.length) made.append(buttons);
  return made;
}

async function remedied(remedy, note) {
  if (remedy.act === "go") return goTo(note.lines[0] ?? 1);
  const fields = new FormData();
  fields.append("typed", typed.value);
  fields.append("act", remedy.act);
  for (const label of remedy.labels) fields.append("label", label);
  for (const value of remedy.values) fields.append("value", value);
  await trying(async () => {
    const now = await ask(`${at}/mended`, fields);
    put(now.typed);
    by("notes-head").focus();
    say(now.words);
  });
}

function goTo(line, column = null) {
  const start = lines().slice(0, line - 1).reduce((sum, text) => sum + text.length + 1, 0);
  const end = start + (lines()[line - 1] ?? "").length;
  typed.focus();
  const from = column ? Math.min(start + column - 1, end) : start;
  typed.setSelectionRange(from, column ? from : end);
  rows.children[line - 1]?.scrollIntoView({ block: "nearest" });
}

/** Set each note beside its first line, or under the note before it. */
function place() {
  const beside = matchMedia("(min-width: 70.01rem)").matches;
  let free = notes.getBoundingClientRect().top;
  for (const note of notes.children) {
    note.style.marginTop = "";
    const line = Number(note.dataset.lines?.split(" ")[0]);
    const row = rows.children[line - 1];
    if (beside && row) {
      const gap = row.getBoundingClientRect().top - free;
      if (gap > 0) note.style.marginTop = `${gap}px`;
    }
    free = note.getBoundingClientRect().bottom + parseFloat(getComputedStyle(note).marginBottom);
  }
}

function lightNotes() {
  if (document.activeElement !== typed) return;
  const line = String(lineAt(typed.selectionStart));
  for (const note of notes.children) note.classList.toggle("here", (note.dataset.lines ?? "").split(" ").includes(line));
}

const hear = calmly((found) => {
  const wrong = found.mistakes.map((one) => `${one.line ? `Line ${one.line}: ` : ""}${one.what}. ${one.remedy}`);
  const many = found.notes.length === 1 ? "1 note" : `${found.notes.length} notes`;
  const first = found.notes[0] ? ` ${found.notes[0].words}` : "";
  const words = wrong.length ? wrong.join(" ") : found.told && `${found.told} ${many}.${first}`;
  if (by("heard").textContent !== words) by("heard").textContent = words;
}, 700);

// Order and room --------------------------------------------------------------------------------------------------

function drawOrder(problems) {
  const focused = document.activeElement?.dataset?.does;
  const place = [...order.children].findIndex((row) => row.contains(document.activeElement));
  order.replaceChildren(...problems.map((one, index) => {
    const button = (does, sign, words, off = false) => make("button", {
      type: "button", class: does === "drag" ? "handle" : "arrow", "data-does": does, "aria-label": words, "aria-disabled": off,
    }, sign);
    const row = make("li", { "data-label": one.label },
      button("drag", "⠿", `Move problem ${one.label}: drag, or arrows up and down`),
      make("span", { class: "what" }, `${one.label}. ${one.asks}`, make("span", { class: "quiet" }, one.room)),
      button("up", "↑", `Problem ${one.label} up`, index === 0),
      button("down", "↓", `Problem ${one.label} down`, index === problems.length - 1));
    return row;
  }));
  if (focused && place >= 0) order.children[Math.min(place, order.children.length - 1)]?.querySelector(`[data-does="${focused}"]`)?.focus();
}

/** Move a problem; the focus goes with it. */
async function move(label, fields, does = null) {
  const index = problemLines().findIndex((one) => one.label === label);
  await trying(async () => {
    const now = await ask(`${at}/moved`, { typed: typed.value, label, ...fields });
    const to = Number(fields.to ?? index + 1 + Number(fields.by));
    const places = problemLines();
    const aim = places[Math.max(1, Math.min(to, places.length)) - 1];
    put(now.typed, does ? null : aim?.line);
    say(now.words);
    if (does) order.children[Math.max(1, Math.min(to, places.length)) - 1]?.querySelector(`[data-does="${does}"]`)?.focus();
  });
}

/** The rows that are problems, readable or not: label and line. */
function problemLines() {
  return lines().flatMap((text, index) => {
    const found = LABEL.exec(text);
    return found ? [{ label: found[1], line: index + 1 }] : [];
  });
}

order.addEventListener("click", (event) => {
  const button = event.target.closest("button");
  if (!button || button.dataset.does === "drag" || button.getAttribute("aria-disabled") === "true") return;
  move(button.closest("li").dataset.label, { by: button.dataset.does === "up" ? -1 : 1 }, button.dataset.does);
});
order.addEventListener("keydown", (event) => {
  const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
  const row = event.target.closest("li");
  if (!step || !row) return;
  event.preventDefault();
  move(row.dataset.label, { by: step }, event.target.dataset.does);
});

let lifted = null;
let aim = null;
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
  aim = [...order.children].find((row) => event.clientY < row.getBoundingClientRect().bottom) ?? order.lastElementChild;
  const before = [...order.children].indexOf(aim) <= [...order.children].indexOf(lifted);
  if (aim !== lifted) aim.classList.add(before ? "over-me" : "under-me");
});
const drop = (moves) => {
  if (!lifted) return;
  const from = lifted;
  unmark();
  from.classList.remove("lifted");
  if (moves && aim && aim !== from) move(from.dataset.label, { to: [...order.children].indexOf(aim) + 1 }, "drag");
  lifted = null;
  aim = null;
};
const unmark = () => [...order.children].forEach((row) => row.classList.remove("over-me", "under-me"));
order.addEventListener("pointerup", () => drop(true));
order.addEventListener("pointercancel", () => drop(false));

// Typing ----------------------------------------------------------------------------------------------------------

const rememberSoon = calmly(remember, 400);
typed.addEventListener("input", () => { changed(); rememberSoon(); });
typed.addEventListener("beforeinput", (event) => {
  if (event.inputType === "historyUndo" || event.inputType === "historyRedo") {
    event.preventDefault();
    go(event.inputType === "historyUndo" ? -1 : 1);
  }
});
typed.addEventListener("keydown", (event) => {
  const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
  if (event.altKey && step) {
    event.preventDefault();
    const line = lineAt(typed.selectionStart);
    const label = problemLines().find((one) => one.line === line)?.label;
    if (label) move(label, { by: step });
    else say("There is no problem on this line.");
  }
});
document.addEventListener("selectionchange", lightNotes);
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey)) return;
  const key = event.key.toLowerCase();
  if (key === "s") { event.preventDefault(); save(); }
  if (event.target !== typed && event.target.matches?.("input, select")) return;
  if (key === "z") { event.preventDefault(); go(event.shiftKey ? 1 : -1); }
  if (key === "y") { event.preventDefault(); go(1); }
});
by("undo").addEventListener("click", () => go(-1));
by("redo").addEventListener("click", () => go(1));

// A draft stays on this machine until it is saved -----------------------------------------------------------------------

const draftName = () => `onewhole draft ${at} ${sheet}`;
const keepDraft = calmly(() => {
  if (typed.value === keptText) localStorage.removeItem(draftName());
  else localStorage.setItem(draftName(), typed.value);
}, 250);
const draft = localStorage.getItem(draftName());
if (draft !== null && draft !== typed.value) {
  by("draft").hidden = false;
  by("draft-back").addEventListener("click", () => { put(draft); by("draft").hidden = true; typed.focus(); });
  by("draft-away").addEventListener("click", () => { localStorage.removeItem(draftName()); by("draft").hidden = true; typed.focus(); });
}

// Saving, setting, printing, composing ------------------------------------------------------------------------------

async function save(as = sheet) {
  const text = typed.value;
  await trying(async () => {
    const now = await ask(`${at}/saved`, { typed: text, sheet: as, recipe: recipeOf(text) });
    localStorage.removeItem(draftName());
    if (as !== String(now.sheet)) history.replaceState(null, "", now.goes);
    const isNew = String(now.sheet) !== sheet;
    sheet = String(now.sheet);
    keptText = text;
    by("which").replaceChildren(make("bdi", {}, now.title), `, version ${now.version}`);
    const versions = by("versions");
    if (isNew) versions.replaceChildren();
    if (versions.firstElementChild?.value !== now.version) {
      versions.prepend(make("li", { value: now.version },
        make("button", { type: "button", class: "small", "data-version": now.version }, `Bring back version ${now.version}`), " ",
        make("span", { class: "quiet" }, make("bdi", {}, now.title), `, ${now.written}`)));
    }
    say(now.words);
  });
}
by("save").addEventListener("click", () => save());
by("copy")?.addEventListener("click", () => save(""));
by("versions").addEventListener("click", (event) => {
  const button = event.target.closest("button");
  if (button) trying(async () => {
    const found = await ask(`${at}/${sheet}/version/${button.dataset.version}`);
    put(found.typed);
    say(found.words);
  });
});

const day = by("day");
day.addEventListener("change", () => {
  const chosen = day.valueAsDate;
  const told = chosen?.toLocaleDateString("en", { weekday: "long", day: "numeric", month: "long", timeZone: "UTC" });
  by("set").textContent = day.value === desk.dataset.today || !told ? "Set for tonight" : `Set for ${told}`;
});
by("tonight").addEventListener("submit", (event) => {
  event.preventDefault();
  trying(async () => {
    const now = await ask(`${at}/set`, { typed: typed.value, sheet, day: day.value, recipe: recipeOf(typed.value) });
    localStorage.removeItem(draftName());
    keptText = typed.value;
    location.assign(now.goes);
  });
});

by("prints").addEventListener("click", (event) => {
  const button = event.target.closest("button");
  if (button) trying(async () => {
    const answer = await fetch(`${at}/printed`, {
      method: "POST", headers: { Accept: "application/json", "X-Seal": seal },
      body: new URLSearchParams({ typed: typed.value, print: button.dataset.print }), credentials: "same-origin",
    });
    if (!answer.ok) throw new Refused(answer.status, await answer.json());
    const name = decodeURIComponent(/filename\*=UTF-8''(.*)/.exec(answer.headers.get("content-disposition"))?.[1] ?? "page.pdf");
    const address = URL.createObjectURL(await answer.blob());
    make("a", { href: address, download: name }).click();
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
    say(`${name} is ready.`);
  });
});

let seed = 0;
let composed = { text: null, recipe: "" };

/** The recipe of a text that stands as it was composed. */
const recipeOf = (text) => (text === composed.text ? composed.recipe : "");

by("wishes").addEventListener("submit", (event) => {
  event.preventDefault();
  const fields = new FormData(event.target);
  fields.set("typed", typed.value);
  fields.set("seed", String(++seed));
  by("compose").setAttribute("aria-disabled", true);
  by("composing").textContent = "Looking through all problems; this takes some seconds.";
  trying(async () => {
    const made = await ask(`${at}/composed`, fields);
    put(made.typed);
    composed = { text: made.typed, recipe: made.recipe };
    by("composed").replaceChildren(...made.told.map((words) => make("li", {}, words)));
    say(made.words);
  }).finally(() => {
    by("composing").textContent = "";
    by("compose").setAttribute("aria-disabled", false);
  });
});

addEventListener("resize", calmly(place, 100));
document.fonts.ready.then(place);
by("undo").disabled = false;
by("redo").disabled = false;
showUndo();
drawRows();
look();
