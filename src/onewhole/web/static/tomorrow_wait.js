// Shows how far the reading of the earlier nights is, and loads the page again when it is over.

import { find, say } from "./kit.js";
import { followed } from "./under_way.js";

const section = find(document, "[data-work]");

followed(section).then(
  (work) => {
    if (work.refused) find(section, ".how-far").textContent = work.refused;
    else location.reload();
  },
  (refused) => say(refused.message),
);
