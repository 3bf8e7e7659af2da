// Shows how far long work is; when it is over, the page tells where what it made is.

import { say } from "./kit.js";
import { howFar, over } from "./under_way.js";

const section = document.querySelector("[data-work]");
const bar = section.querySelector("progress");
const told = section.querySelector(".how-far");

function show(work) {
  told.textContent = howFar(work);
  if (!work.of) return;
  bar.max = work.of;
  bar.value = work.done;
}

if (bar) over(section.dataset.work, show).then(() => location.reload(), (refused) => say(refused.message));
