// What the server refuses is told above the desk; nothing is lost.

import { get, refusal } from "./kit.js";

const refused = get("refused");

/** Begin with a capital. @param {string} words */
export const large = (words) => words.charAt(0).toUpperCase() + words.slice(1);

/** Tell what was refused. Anything else that went wrong is raised again. @param {unknown} error */
export function tell(error) {
  const { where, refused: what, remedy } = refusal(error).told;
  const said = large(what.replace(/\.?$/, "."));
  refused.textContent = [where ? `${large(where)}: ${said}` : said, remedy].filter(Boolean).join(" ");
  refused.hidden = false;
}

/** Do something that the server may refuse. @param {() => Promise<unknown>} run */
export async function trying(run) {
  try {
    await run();
    refused.hidden = true;
  } catch (error) {
    tell(error);
  }
}
