// The grid: its cells, the one the teacher is in, and the way from cell to cell.

import { all, around, find, get } from "./kit.js";
import { Cell, keyOf } from "./marking_cell.js";

export class Grid {
  /**
   * @param {HTMLTableElement} table
   * @param {(cell: Cell) => void} left hears of a cell that is left: what is typed there is the teacher's word
   */
  constructor(table, left) {
    this.table = table;
    this.left = left;
    const [body] = table.tBodies;
    this.rows = [...body.rows].map((tr, row) => all(tr, "td").map((td, column) => new Cell(td, row, column)));
    this.cells = new Map(this.rows.flat().map((cell) => [cell.key, cell]));
    this.heads = all(table, "thead th[data-label]");
    this.here = this.rows[0][0];
    this.sheet = /** @type {HTMLElement} */ (table.closest(".sheet"));
    this.bar = get("verdict");
    this.narrow = window.matchMedia("(max-width: 48rem)");
  }

  get head() { return this.heads[this.here.column].dataset; }

  get every() { return [...this.cells.values()]; }

  /**
   * @param {Event} event
   * @returns {Cell | null} the cell whose field an event happened to
   */
  at(event) {
    const td = around(event, "td input")?.closest("td");
    return (td && this.cells.get(keyOf(td.dataset.code, td.dataset.label))) ?? null;
  }

  /**
   * @param {string} code
   * @param {string} label
   * @returns {Cell}
   */
  of(code, label) {
    return /** @type {Cell} */ (this.cells.get(keyOf(code, label)));
  }

  /**
   * Go to a cell, or to the last one on the way there.
   * @param {number} row
   * @param {number} column
   */
  go(row, column) {
    const inside = (/** @type {number} */ at, /** @type {number} */ count) => Math.max(0, Math.min(at, count - 1));
    const cell = this.rows[inside(row, this.rows.length)][inside(column, this.heads.length)];
    if (cell === this.here) cell.input.select();
    this.enter(cell);
    cell.input.focus();
  }

  /**
   * @param {number} down
   * @param {number} across
   */
  step(down, across) {
    this.go(this.here.row + down, this.here.column + across);
  }

  /** Go on after Enter, along the paper or down the problem. Returns false in the last cell. */
  next() {
    const { row, column } = this.here;
    const lastRow = row === this.rows.length - 1;
    const lastColumn = column === this.heads.length - 1;
    if (lastRow && lastColumn) return false;
    if (find(document, "input[name=enter]:checked", HTMLInputElement).value === "down") this.go(lastRow ? 0 : row + 1, column + (lastRow ? 1 : 0));
    else this.go(row + (lastColumn ? 1 : 0), lastColumn ? 0 : column + 1);
    return true;
  }

  /** @param {Cell} cell */
  enter(cell) {
    if (cell === this.here) return;
    this.left(this.here);
    this.mark(false);
    this.here = cell;
    this.mark(true);
  }

  /** @param {boolean} isHere */
  mark(isHere) {
    this.here.input.tabIndex = isHere ? 0 : -1;
    this.table.tBodies[0].rows[this.here.row].classList.toggle("now", isHere);
  }

  /** The head of the grid stays in sight with the cell one is in. */
  inSight() {
    if (this.narrow.matches) return;
    const low = this.here.td.getBoundingClientRect().bottom > window.innerHeight - this.bar.offsetHeight;
    if (low || this.sheet.getBoundingClientRect().top < 0) this.sheet.scrollIntoView({ block: "start" });
  }
}
