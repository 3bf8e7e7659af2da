// The spot check: a digit ticks the answer beside it, 0 the tenth.

import { all, get } from "./kit.js";

/** @param {string} key */
export function tickSpot(key) {
  const section = get("spot");
  if (section.hidden) return false;
  const ticks = /** @type {HTMLInputElement[]} */ (all(section, "input[type=checkbox]"));
  const tick = ticks[(Number(key) + 9) % 10];
  if (!tick) return false;
  tick.checked = !tick.checked;
  tick.focus();
  return true;
}
