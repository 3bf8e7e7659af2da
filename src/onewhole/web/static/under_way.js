// Follows long work until it is over.

import { Refused, ask, find, say } from "./kit.js";

/**
 * Long work as the server tells it.
 * @typedef {object} Work
 * @property {number} done
 * @property {number} of
 * @property {number | null} seconds
 * @property {string} far how far it is, in words
 * @property {boolean} ended
 * @property {string} said
 * @property {string} refused
 * @property {string} [typed]
 * @property {string} [told] what to know of it, as markup of list items
 * @property {string} [recipe]
 */

/**
 * Return work once it is over; until then `show` is told again and again how far it is.
 * @param {string} address where it is told how far the work is
 * @param {(now: Work) => void} show
 * @returns {Promise<Work>}
 */
export async function over(address, show) {
  for (;;) {
    let wait = 500;
    try {
      /** @type {Work} */
      const work = await ask(address);
      if (work.ended) return work;
      show(work);
    } catch (error) {
      if (!(error instanceof Refused) || error.status !== 0) throw error;
      say(error.message);
      wait = 2000;
    }
    await new Promise((go) => { setTimeout(go, wait); });
  }
}

/**
 * Return work once it is over; until then a section of the page shows how far it is.
 * @param {HTMLElement} section
 */
export function followed(section) {
  const bar = find(section, "progress", HTMLProgressElement);
  const told = find(section, ".how-far");
  return over(section.dataset.work ?? "", ({ of, done, far }) => {
    told.textContent = far;
    if (!of) return;
    bar.max = of;
    bar.value = done;
  });
}
