// What is kept: the draft on this machine, the versions, the night that the page is set for, the printed page.

import { ask, around, calmly, csrfToken, find, fragment, get, refusal, say } from "./kit.js";
import { trying } from "./page_desk_refused.js";
import { put, standBefore, typed } from "./page_desk_text.js";
import { recipeOf } from "./page_desk_wishes.js";

/** A page that was kept; `which` and `row` are markup. @typedef {{ sheet: number, version: number, which: string, row: string, goes: string, words: string }} Kept */

const desk = get("desk");
const versions = get("versions");

// A draft stays on this machine until it is saved -----------------------------------------------------------------

const draftName = () => `onewhole draft ${desk.dataset.at} ${desk.dataset.sheet}`;
const keepDraft = calmly(() => {
  if (typed.value === savedText) localStorage.removeItem(draftName());
  else localStorage.setItem(draftName(), typed.value);
}, 250);
const draft = localStorage.getItem(draftName());
let savedText = desk.dataset.saved ?? typed.value;

typed.addEventListener("changed", keepDraft);
if (desk.dataset.saved !== undefined) {
  standBefore([savedText, draft ?? typed.value].filter((text) => text !== typed.value));
  history.replaceState(null, "", location.pathname);
  keepDraft();
} else if (draft !== null && draft !== typed.value) {
  get("draft").hidden = false;
  get("draft-back").addEventListener("click", () => { put(draft); get("draft").hidden = true; typed.focus(); });
  get("draft-away").addEventListener("click", () => { localStorage.removeItem(draftName()); get("draft").hidden = true; typed.focus(); });
}

// Saving, versions, the night ---------------------------------------------------------------------------------------

/**
 * Send what is typed with the version that this desk began with. Where another window saved a later one, that is told and
 * listed; sent once more, what is typed becomes the next one.
 * @param {string} address
 * @param {Record<string, string>} fields
 */
async function sent(address, fields) {
  try {
    return await ask(address, { ...fields, saw: desk.dataset.saw ?? "" });
  } catch (error) {
    const { stands, row } = refusal(error).told;
    if (stands && row) {
      desk.dataset.saw = stands;
      drawVersion({ version: Number(stands), row });
      versions.closest("details")?.setAttribute("open", "");
    }
    throw error;
  }
}

async function save(as = desk.dataset.sheet ?? "") {
  const text = typed.value;
  await trying(async () => {
    /** @type {Kept} */
    const now = await sent(desk.dataset.toSaved ?? "", { typed: text, sheet: as, recipe: recipeOf(text) });
    localStorage.removeItem(draftName());
    if (as !== String(now.sheet)) history.replaceState(null, "", now.goes);
    const isNew = String(now.sheet) !== desk.dataset.sheet;
    desk.dataset.sheet = String(now.sheet);
    desk.dataset.saw = String(now.version);
    savedText = text;
    get("which").replaceChildren(fragment(now.which));
    if (isNew) versions.replaceChildren();
    drawVersion(now);
    say(now.words);
  });
}

/** @param {{ version: number, row: string }} now */
function drawVersion(now) {
  const last = versions.querySelector("li");
  if (last?.value === now.version) return;
  versions.prepend(fragment(now.row));
}

get("save").addEventListener("click", () => save());
document.getElementById("copy")?.addEventListener("click", () => save(""));
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "s") return;
  event.preventDefault();
  save();
});
versions.addEventListener("click", (event) => {
  const button = around(event, "button");
  if (!button) return;
  trying(async () => {
    const found = await ask(button.dataset.goes ?? "");
    put(found.typed);
    say(found.words);
  });
});

const day = get("day", HTMLInputElement);
day.addEventListener("change", () => {
  const { tonight = "", other = "" } = get("set").dataset;
  const told = day.valueAsDate?.toLocaleDateString("en-GB", { weekday: "long", day: "numeric", month: "long", timeZone: "UTC" });
  get("set").textContent = day.value === desk.dataset.today || !told ? tonight : other.replace("{day}", told);
});
get("tonight").addEventListener("submit", (event) => {
  event.preventDefault();
  const text = typed.value;
  trying(async () => {
    const fields = { typed: text, sheet: desk.dataset.sheet ?? "", day: day.value, whom: get("whom", HTMLInputElement).value, recipe: recipeOf(text) };
    const now = await sent(desk.dataset.toSet ?? "", fields);
    localStorage.removeItem(draftName());
    savedText = text;
    location.assign(now.goes);
  });
});

get("print-it").addEventListener("submit", () => {
  find(get("print-it"), "[name=typed]", HTMLInputElement).value = typed.value;
  find(get("print-it"), "[name=csrf_token]", HTMLInputElement).value = csrfToken();
});
