// A page composed by wishes: long work, whose page comes into the text when it is done.

import { ask, make, Refused, say } from "./kit.js";
import { trying } from "./page_desk_refused.js";
import { put, typed } from "./page_desk_text.js";
import { over } from "./under_way.js";

const by = (id) => document.getElementById(id);
const desk = by("desk");
const wishes = by("wishes");
const compose = by("compose");

let seed = 0;
let composed = { text: desk.dataset.recipe ? typed.value : null, recipe: desk.dataset.recipe };

/** The recipe of a text that stands as it was composed. */
export const recipeOf = (text) => (text === composed.text ? composed.recipe : "");

async function made() {
  const fields = new FormData(wishes);
  fields.set("typed", typed.value);
  fields.set("sheet", desk.dataset.sheet);
  fields.set("seed", String(++seed));
  fields.set("script", "yes");
  const begun = await ask(wishes.action, fields);
  by("composing").textContent = "Composing goes on, also when you leave this page.";
  const work = await over(begun.now, ({ far }) => { by("so-far").textContent = far; });
  if (work.refused) throw new Refused(422, { refused: work.refused });
  return work;
}

wishes.addEventListener("submit", async (event) => {
  event.preventDefault();
  if (compose.getAttribute("aria-disabled") === "true") return say("A page is being composed already.");
  compose.setAttribute("aria-disabled", true);
  await trying(async () => {
    const { typed: text, recipe, told, said } = await made();
    put(text);
    composed = { text, recipe };
    by("composed").replaceChildren(...told.map((words) => make("li", {}, words)));
    say(said);
  }).finally(() => {
    by("composing").textContent = "";
    by("so-far").textContent = "";
    compose.setAttribute("aria-disabled", false);
  });
});
