// A page composed by wishes: long work, whose page comes into the text when it is done.

import { ask, fragment, get, Refused, say } from "./kit.js";
import { trying } from "./page_desk_refused.js";
import { put, typed } from "./page_desk_text.js";
import { over } from "./under_way.js";

const desk = get("desk");
const wishes = get("wishes", HTMLFormElement);
const compose = get("compose");

let seed = 0;
/** @type {{ text: string | null, recipe: string }} */
let composed = { text: desk.dataset.recipe ? typed.value : null, recipe: desk.dataset.recipe ?? "" };

/** The recipe of a text that stands as it was composed. @param {string} text */
export const recipeOf = (text) => (text === composed.text ? composed.recipe : "");

async function made() {
  const fields = new FormData(wishes);
  fields.set("typed", typed.value);
  fields.set("sheet", desk.dataset.sheet ?? "");
  fields.set("seed", String(++seed));
  fields.set("script", "yes");
  const begun = await ask(wishes.action, fields);
  get("composing").textContent = "Composing goes on, also when you leave this page.";
  const work = await over(begun.now, ({ far }) => { get("so-far").textContent = far; });
  if (work.refused) throw new Refused(422, { refused: work.refused });
  return work;
}

wishes.addEventListener("submit", async (event) => {
  event.preventDefault();
  if (compose.getAttribute("aria-disabled") === "true") {
    say("A page is being composed already.");
    return;
  }
  compose.setAttribute("aria-disabled", "true");
  await trying(async () => {
    const { typed: text = "", recipe = "", told = "", said } = await made();
    put(text);
    composed = { text, recipe };
    get("composed").replaceChildren(fragment(told));
    say(said);
  }).finally(() => {
    get("composing").textContent = "";
    get("so-far").textContent = "";
    compose.setAttribute("aria-disabled", "false");
  });
});
