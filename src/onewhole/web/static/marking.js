// The Marking page: who hears what at the grid. It is not there while the class has no pupils.

import { around, get } from "./kit.js";
import { listenToBlock } from "./marking_block.js";
import { listenToClose } from "./marking_close.js";
import { Desk } from "./marking_desk.js";
import { actOf } from "./marking_keys.js";
import { listenToColumn, paste, toColumn } from "./marking_many.js";
import { listenToMore } from "./marking_more.js";
import { listenToPhotos } from "./marking_photo.js";
import { listenToTotals } from "./marking_totals.js";
import { listenToLeaving, lookAround } from "./marking_windows.js";

const desk = new Desk(get("grid", HTMLTableElement));
const { grid } = desk;

function next() {
  if (grid.next()) return;
  desk.commit(desk.here);
  desk.here.input.select();
  desk.announce("That was the last cell.");
}

/** @type {Record<import("./marking_keys.js").Act, () => unknown>} */
const ACTS = {
  next,
  up: () => grid.step(-1, 0),
  down: () => grid.step(1, 0),
  left: () => grid.step(0, -1),
  right: () => grid.step(0, 1),
  rowStart: () => grid.go(desk.here.row, 0),
  rowEnd: () => grid.go(desk.here.row, grid.heads.length - 1),
  first: () => grid.go(0, 0),
  last: () => grid.go(grid.rows.length - 1, grid.heads.length - 1),
  foretell: () => desk.foretell(),
  correct: () => desk.type(desk.here, grid.head.right ?? ""),
  keys: () => { get("keys", HTMLDetailsElement).open = !get("keys", HTMLDetailsElement).open; },
  asItWas: () => desk.asItWas(),
  takeBack: () => desk.takeBack(),
  column: () => toColumn(desk),
};

listenToBlock(desk);
grid.table.addEventListener("keydown", (event) => {
  if (!grid.at(event)) return;
  const { editing, foretold, input } = desk.here;
  const place = { editing, isForetold: Boolean(foretold), from: input.selectionStart, to: input.selectionEnd, length: input.value.length };
  const act = actOf(event, place);
  if (!act) return;
  event.preventDefault();
  ACTS[act]();
});
grid.table.addEventListener("focusin", (event) => {
  const cell = grid.at(event);
  if (!cell) return;
  grid.enter(cell);
  cell.input.select();
  requestAnimationFrame(() => grid.inSight());
  desk.tell();
});
grid.table.addEventListener("focusout", (event) => { if (grid.at(event) === desk.here) desk.commit(desk.here); });
grid.table.addEventListener("input", (event) => {
  const cell = grid.at(event);
  if (!cell) return;
  desk.typed(cell);
  desk.keepSoon(cell);
});
grid.table.addEventListener("click", (event) => { around(event, "td")?.querySelector("input")?.focus(); });
grid.table.addEventListener("paste", (event) => { paste(desk, event); });
listenToClose();
listenToColumn(desk);
listenToMore(desk);
listenToPhotos(desk);
listenToTotals(grid);
listenToLeaving(desk);
lookAround(desk);
desk.tell();
