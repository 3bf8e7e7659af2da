// Other windows of the same night are looked at again and again; this one is not left before all is kept.

import { around, ask, find, get } from "./kit.js";
import { showClashes } from "./marking_clashes.js";

/** @typedef {import("./marking_cell.js").Seen} Seen */
/** @typedef {import("./marking_desk.js").Desk} Desk */

const AGAIN = 3000;

/** @param {Desk} desk */
export function lookAround(desk) {
  let stamp = desk.grid.table.dataset.stamp ?? "";

  async function look() {
    const { saving } = desk;
    const { turn } = saving;
    if (document.hidden || !saving.idle) return;
    /** @type {{ stamp: string, cells?: Seen[] }} */
    let found;
    try {
      found = await ask(`${desk.to("now")}?${new URLSearchParams({ since: stamp })}`);
    } catch {
      return; // saving tells that there is no answer, as soon as there is something to lose
    }
    if (turn !== saving.turn || !saving.idle) return;
    stamp = found.stamp;
    for (const seen of found.cells ?? []) take(desk, seen);
  }

  setInterval(look, AGAIN);
  document.addEventListener("visibilitychange", () => {
    if (document.hidden) desk.commit(desk.here);
    else look();
  });
}

/**
 * Show what another window wrote, unless something else is being written here.
 * @param {Desk} desk
 * @param {Seen} seen
 */
function take(desk, seen) {
  const cell = desk.grid.of(seen.code, seen.label);
  if (!cell || (seen.text === cell.kept && seen.readAs === cell.readAs)) return;
  if (cell.stands !== null) {
    cell.stands = seen.text;
    showClashes(desk);
  } else if (cell.text === cell.kept && !cell.editing) {
    cell.take(seen);
    if (cell === desk.here) desk.tell();
  }
}

/** @param {Desk} desk */
export function listenToLeaving(desk) {
  const { saving } = desk;
  find(get("unkept"), "button").addEventListener("click", () => saving.now());
  window.addEventListener("beforeunload", (event) => {
    desk.commit(desk.here);
    const isOpen = desk.grid.every.some((cell) => ["clash", "refused"].includes(cell.state));
    if (isOpen || saving.failing || saving.waiting.size) event.preventDefault();
  });
  document.addEventListener("click", async (event) => {
    const link = around(event, "a[href]");
    if (!(link instanceof HTMLAnchorElement) || event.ctrlKey || event.metaKey || event.shiftKey) return;
    desk.commit(desk.here);
    if (saving.idle || saving.failing) return;
    event.preventDefault(); // the next page shall know what was typed here last
    await saving.rest();
    location.assign(link.href);
  });
}
