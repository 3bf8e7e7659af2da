// Pupil: the button that prints the page.

import { get } from "./kit.js";

const button = get("print", HTMLButtonElement);
button.hidden = false;
button.addEventListener("click", () => window.print());
