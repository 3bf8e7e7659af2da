// What the server refuses is told above the desk; nothing is lost.

import { Refused } from "./kit.js";

const refused = document.getElementById("refused");

/** Begin with a capital. */
export const large = (words) => words.charAt(0).toUpperCase() + words.slice(1);

/** Tell what was refused. Anything else that went wrong is raised again. */
export function tell(error) {
  if (error.name === "AbortError") return;
  if (!(error instanceof Refused)) throw error;
  const { where, refused: what, remedy } = error.told;
  const said = large(what.replace(/\.?$/, "."));
  refused.textContent = [where ? `${large(where)}: ${said}` : said, remedy].filter(Boolean).join(" ");
  refused.hidden = false;
}

/** Do something that the server may refuse. */
export async function trying(run) {
  try {
    await run();
    refused.hidden = true;
  } catch (error) {
    tell(error);
  }
}
