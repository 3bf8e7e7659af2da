// What is kept: the draft on this machine, the versions, the night that the page is set for, the printed page.

import { ask, calmly, make, Refused, say } from "./kit.js";
import { trying } from "./page_desk_refused.js";
import { put, standBefore, typed } from "./page_desk_text.js";
import { recipeOf } from "./page_desk_wishes.js";

const by = (id) => document.getElementById(id);
const desk = by("desk");
const { at } = desk.dataset;

// A draft stays on this machine until it is saved -----------------------------------------------------------------

const draftName = () => `onewhole draft ${at} ${desk.dataset.sheet}`;
const keepDraft = calmly(() => {
  if (typed.value === savedText) localStorage.removeItem(draftName());
  else localStorage.setItem(draftName(), typed.value);
}, 250);
const draft = localStorage.getItem(draftName());
let savedText = desk.dataset.saved ?? typed.value;

typed.addEventListener("changed", keepDraft);
if (desk.dataset.saved !== undefined) {
  standBefore([savedText, draft].filter((text) => text !== null && text !== typed.value));
  history.replaceState(null, "", location.pathname);
  keepDraft();
} else if (draft !== null && draft !== typed.value) {
  by("draft").hidden = false;
  by("draft-back").addEventListener("click", () => { put(draft); by("draft").hidden = true; typed.focus(); });
  by("draft-away").addEventListener("click", () => { localStorage.removeItem(draftName()); by("draft").hidden = true; typed.focus(); });
}

// Saving, versions, the night ---------------------------------------------------------------------------------------

async function save(as = desk.dataset.sheet) {
  const text = typed.value;
  await trying(async () => {
    const now = await ask(`${at}/saved`, { typed: text, sheet: as, recipe: recipeOf(text) });
    localStorage.removeItem(draftName());
    if (as !== String(now.sheet)) history.replaceState(null, "", now.goes);
    const isNew = String(now.sheet) !== desk.dataset.sheet;
    desk.dataset.sheet = now.sheet;
    savedText = text;
    by("which").replaceChildren(make("bdi", {}, now.title), `, version ${now.version}`);
    if (isNew) by("versions").replaceChildren();
    drawVersion(now);
    say(now.words);
  });
}

function drawVersion(now) {
  const versions = by("versions");
  if (versions.firstElementChild?.value === now.version) return;
  versions.prepend(make("li", { value: now.version },
    make("button", { type: "button", class: "small", "data-version": now.version }, `Bring back version ${now.version}`), " ",
    make("span", { class: "quiet" }, make("bdi", {}, now.title), `, ${now.written}`)));
}

by("save").addEventListener("click", () => save());
by("copy")?.addEventListener("click", () => save(""));
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "s") return;
  event.preventDefault();
  save();
});
by("versions").addEventListener("click", (event) => {
  const button = event.target.closest("button");
  if (button) trying(async () => {
    const found = await ask(`${at}/${desk.dataset.sheet}/version/${button.dataset.version}`);
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
  const text = typed.value;
  trying(async () => {
    const fields = { typed: text, sheet: desk.dataset.sheet, day: day.value, recipe: recipeOf(text) };
    const now = await ask(`${at}/set`, fields);
    localStorage.removeItem(draftName());
    savedText = text;
    location.assign(now.goes);
  });
});

by("prints").addEventListener("click", (event) => {
  const button = event.target.closest("button");
  if (button) trying(async () => {
    const answer = await fetch(`${at}/printed`, {
      method: "POST",
      headers: { Accept: "application/json", "X-CSRF-Token": document.querySelector('meta[name="csrf_token"]').content },
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
