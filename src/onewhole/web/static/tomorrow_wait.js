// Shows how far the reading of the earlier nights is, and loads the page again when it is over.

import { find, say } from "./kit.js";
import { over } from "./under_way.js";

const section = find(document, "[data-work]");
const bar = find(section, "progress", HTMLProgressElement);
const told = find(section, ".how-far");

over(section.dataset.work ?? "", ({ of, done }) => {
  if (!of) return;
  bar.max = of;
  bar.value = done;
  told.textContent = `${done} of ${of} nights`;
}).then(
  (work) => {
    if (work.refused) told.textContent = work.refused;
    else location.reload();
  },
  (refused) => say(refused.message),
);
