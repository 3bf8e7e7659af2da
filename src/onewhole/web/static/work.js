// Asks again how far long work is, until it has ended; then the page tells where what it made is.

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
  if (work.ended) {
    location.reload();
    return;
  }
  if (work.of) {
    bar.max = work.of;
    bar.value = work.done;
    told.textContent = `${work.done} of ${work.of}`;
  }
  setTimeout(look, 500);
}

if (bar) look();
