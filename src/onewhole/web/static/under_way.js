// Follows long work until it is over.

import { ask, say } from "./kit.js";

/** Return work once it is over; until then `show` is told again and again how far it is. */
export async function over(name, show) {
  for (;;) {
    let wait = 500;
    try {
      const work = await ask(`/under-way/${name}/now`);
      if (work.ended) return work;
      show(work);
    } catch (error) {
      if (error.status !== 0) throw error;
      say(error.message);
      wait = 2000;
    }
    await new Promise((go) => { setTimeout(go, wait); });
  }
}

/** How far work is, in words. */
export function howFar({ done, of, seconds }) {
  if (of) return `${done} of ${of}`;
  if (seconds === null) return "Waits for other work to end";
  return seconds === 1 ? "1 second so far" : `${seconds} seconds so far`;
}
