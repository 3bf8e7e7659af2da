// Shows how far the reading of the earlier nights is, and loads the page again when it is over.

import { say } from "./kit.js";
import { over } from "./under_way.js";

const section = document.querySelector("[data-work]");
const bar = section.querySelector("progress");
const told = section.querySelector(".how-far");

function show({ done, of }) {
  if (!of) return;
  bar.max = of;
  bar.value = done;
  told.textContent = `${done} of ${of} nights`;
}

over(section.dataset.work, show).then(
  (work) => { if (work.refused) told.textContent = work.refused; else location.reload(); },
  (refused) => say(refused.message),
);
