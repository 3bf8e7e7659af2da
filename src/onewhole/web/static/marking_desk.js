// What the teacher does at the grid: type, keep, take back, look at predictions. Typing never waits for the server.

import { ask, get, loaded, refusal, say } from "./kit.js";
import { showClashes } from "./marking_clashes.js";
import { Grid } from "./marking_grid.js";
import { Judge } from "./marking_judge.js";
import { Saving } from "./marking_saving.js";
import { Status } from "./marking_status.js";

/** @typedef {import("./marking_cell.js").Cell} Cell */
/** Id and name of a pattern, and what it would write. @typedef {[id: string, name: string, text: string]} Predicted */
/** A cell, what stood in it, what stands in it now. @typedef {[cell: Cell, before: string, after: string]} Change */
/** The addresses that the page asks. @typedef {"judge" | "foretell" | "keep" | "column" | "readAs" | "now" | "written"} Address */

const READ = 12000; // milliseconds after which a sentence leaves the screen

/**
 * Whose writing a prediction is.
 * @param {Predicted} predicted
 */
export const whose = ([id, name]) => `“${name}” (${id})`;

export class Desk {
  /** @param {HTMLTableElement} table */
  constructor(table) {
    this.grid = new Grid(table, (cell) => this.commit(cell));
    this.status = new Status(this.grid);
    this.judge = new Judge((label, text) => ask(this.to("judge"), { label, text }), (cell) => {
      if (cell === this.here) this.tell();
    });
    this.saving = new Saving({
      send: (form, keepalive) => ask(this.to("keep"), form, { keepalive }),
      renew: async () => (await loaded(location.href).catch(() => null))?.isNewToken ?? false,
    }, this.grid.cells, {
      kept: (kept, refused, words = []) => {
        if (kept.includes(this.here)) this.tell();
        if (refused.length) this.announce(refused[0].why);
        else if (words.length) this.announce(words.join(" "));
      },
      clash: (cell) => {
        showClashes(this);
        this.announce(`${cell.name} was changed in another window too. Choose above the grid.`);
      },
      failing: (words, count) => this.failing(words, count),
    });
    /** @type {Change[][]} */
    this.undo = [];
    /** @type {{ cell: Cell | null, all: Predicted[], at: number }} */
    this.predicted = { cell: null, all: [], at: -1 };
    /** @type {ReturnType<typeof setTimeout> | undefined} */
    this.quiet = undefined;
    /** @type {ReturnType<typeof setTimeout> | undefined} */
    this.pause = undefined;
    this.told = () => {};
  }

  get here() { return this.grid.here; }

  /** @param {Address} what */
  to(what) {
    return this.grid.table.dataset[what] ?? "";
  }

  /**
   * Say something to everybody, and take it off the screen when it was read.
   * @param {string} words
   */
  announce(words) {
    say(words);
    clearTimeout(this.quiet);
    this.quiet = setTimeout(() => say(""), READ);
  }

  /**
   * @param {string} words
   * @param {number} count
   */
  failing(words, count) {
    const unkept = get("unkept");
    const place = unkept.firstElementChild;
    const told = `${count === 1 ? "1 cell is" : `${count} cells are`} not kept yet. ${words} It is tried again by itself; leave this page open.`;
    unkept.hidden = !words;
    if (place && place.textContent !== told) place.textContent = words ? told : "";
    if (!words) this.announce("Kept again.");
  }

  /** Tell of the cell one is in. */
  tell() {
    this.here.mark();
    this.status.tell(this.told);
  }

  /**
   * What is typed in a cell is the teacher's word now: it goes to the disk.
   * @param {Cell} cell
   */
  commit(cell) {
    cell.foretold = null;
    if (cell.editing && cell.isTyping) this.change([[cell, cell.input.value]]);
    cell.editing = false;
    cell.mark();
  }

  /**
   * Write cells and send them; the writing can be taken back as one.
   * @param {[Cell, string][]} writes
   * @param {boolean} [undoing]
   */
  change(writes, undoing = false) {
    const changed = writes.filter(([cell, text]) => cell.text !== text);
    if (!undoing && changed.length) this.undo.push(changed.map(([cell, text]) => [cell, cell.text, text]));
    for (const [cell, text] of changed) cell.write(text);
    this.saving.put(changed.map(([cell]) => cell).filter((cell) => cell.stands === null));
    if (changed.some(([cell]) => cell.stands !== null)) showClashes(this);
  }

  takeBack() {
    const group = this.undo.pop();
    if (!group) {
      this.announce("There is nothing to take back.");
      return;
    }
    /** @type {[Cell, string][]} */
    const writes = group.filter(([cell, , after]) => cell.text === after).map(([cell, before]) => [cell, before]);
    this.change(writes, true);
    writes.forEach(([cell]) => this.judge.look(cell));
    this.tell();
    this.announce(writes.length === 1 ? `${writes[0][0].name} is as it was.` : `${writes.length} cells are as they were.`);
  }

  /**
   * Type into a cell for the teacher; `foretold` says whose writing it is.
   * @param {Cell} cell
   * @param {string} text
   * @param {string | null} [foretold]
   */
  type(cell, text, foretold = null) {
    cell.input.value = text;
    this.typed(cell, foretold);
  }

  /**
   * A text was typed into a cell: it is judged now, and kept when the typing rests.
   * @param {Cell} cell
   * @param {string | null} [foretold]
   */
  typed(cell, foretold = null) {
    cell.editing = true;
    cell.foretold = foretold;
    this.judge.look(cell);
    this.tell();
  }

  /** The teacher goes on typing, so the cell stays open. @param {Cell} cell */
  keepSoon(cell) {
    clearTimeout(this.pause);
    this.pause = setTimeout(() => {
      if (!cell.editing || cell.foretold || !cell.isTyping) return;
      this.change([[cell, cell.input.value]]);
      cell.editing = true;
    }, 2000);
  }

  asItWas() {
    const { here } = this;
    here.input.value = here.text;
    here.editing = false;
    here.foretold = null;
    this.judge.look(here);
    here.input.select();
    this.tell();
  }

  /**
   * What the likeliest patterns would write in a cell.
   * @param {Cell} cell
   * @returns {Promise<Predicted[]>}
   */
  async predictions(cell) {
    const row = this.grid.rows[cell.row].map((one) => [one.label, one.readAs ?? one.text]);
    return (await ask(this.to("foretell"), { label: cell.label, row: JSON.stringify(row) })).predicted;
  }

  /** Write what the likeliest pattern would write into the cell one is in; again: the next one. */
  async foretell() {
    const { here: cell, predicted } = this;
    const before = cell.input.value;
    if (predicted.cell !== cell || !cell.foretold) {
      try {
        this.predicted = { cell, all: await this.predictions(cell), at: -1 };
      } catch (error) {
        this.announce(refusal(error).message);
        return;
      }
    }
    if (cell !== this.here || cell.input.value !== before) return;
    const now = this.predicted;
    if (!now.all.length) {
      this.announce("No pattern would write something else here.");
      return;
    }
    now.at = (now.at + 1) % now.all.length;
    const one = now.all[now.at];
    this.type(cell, one[2], whose(one));
  }
}
