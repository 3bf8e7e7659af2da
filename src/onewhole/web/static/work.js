// Shows how far long work is; when it is over, the page is loaded again and tells what was made or refused.

import { find, say } from "./kit.js";
import { over } from "./under_way.js";

const section = find(document, "[data-work]");
const bar = section.querySelector("progress");

if (bar) {
  const told = find(section, ".how-far");
  over(section.dataset.work ?? "", ({ of, done, far }) => {
    told.textContent = far;
    if (!of) return;
    bar.max = of;
    bar.value = done;
  }).then(() => location.reload(), (refused) => say(refused.message));
}
