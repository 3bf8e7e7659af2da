// Asks how far the reading of the earlier nights is, and loads the page again when it is over.

import { ask, say } from "./kit.js";

const section = document.querySelector("[data-work]");
const bar = section.querySelector("progress");
const told = section.querySelector(".how-far");

async function look() {
  let work;
  try {
    work = await ask(`/under-way/${section.dataset.work}/now`);
  } catch (refused) {
    say(refused.message);
    if (refused.status === 0) setTimeout(look, 2000);
    return;
  }
  if (work.refused) {
    told.textContent = work.refused;
    return;
  }
  if (work.ended) {
    location.reload();
    return;
  }
  if (work.of) {
    bar.max = work.of;
    bar.value = work.done;
    told.textContent = `${work.done} of ${work.of} nights`;
  }
  setTimeout(look, 300);
}

look();
