// Shows how far long work is; when it is over, the page is loaded again and tells what was made or refused.

import { find, say } from "./kit.js";
import { followed } from "./under_way.js";

const section = find(document, "[data-work]");

if (section.querySelector("progress")) followed(section).then(() => location.reload(), (refused) => say(refused.message));
