// Cells on their way to the disk: one request at a time, the latest text of each cell, again until it is kept.

import { refusal } from "./kit.js";
import { keyOf } from "./marking_cell.js";

/** @typedef {import("./kit.js").Refused} Refused */
/** @typedef {import("./marking_cell.js").Cell} Cell */
/** @typedef {import("./marking_cell.js").Seen} Seen */
/** A cell of a request: its text, and the text that it takes the place of. @typedef {{ cell: Cell, text: string, was: string }} Sent */
/** @typedef {{ at: number, why: string }} NotKept */
/** @typedef {{ kept: Seen[], clashes: Seen[], refused: NotKept[], told?: string[] }} Found */

/**
 * What saving needs of the world: `send` puts cells on the disk, `renew` takes a new session's CSRF token where there is one.
 * @typedef {object} World
 * @property {(form: FormData, keepalive: boolean) => Promise<Found>} send
 * @property {() => Promise<boolean>} renew
 */
/**
 * Who hears of it. `failing` without words: it goes on again.
 * @typedef {object} Told
 * @property {(cells: Cell[], refused: NotKept[], words?: string[]) => void} kept
 * @property {(cell: Cell) => void} clash
 * @property {(words: string, count: number) => void} failing
 */

const FIRST_WAIT = 1000;
const LONGEST_WAIT = 8000;
const MOST_ALIVE = 15000; // characters; a browser takes 64 KiB

export class Saving {
  /**
   * @param {World} world
   * @param {Map<string, Cell>} cells
   * @param {Told} told
   */
  constructor(world, cells, told) {
    this.world = world;
    this.cells = cells;
    this.told = told;
    /** @type {Map<string, Cell>} */
    this.waiting = new Map();
    this.isOut = false;
    this.wait = FIRST_WAIT;
    /** @type {ReturnType<typeof setTimeout> | null} */
    this.timer = null;
    this.turn = 0; // grows whenever a request goes out or comes back
    this.words = "";
    /** @type {((done?: unknown) => void)[]} */
    this.resting = [];
  }

  get idle() { return !this.isOut && !this.waiting.size; }

  get failing() { return this.timer !== null; }

  /** @param {Cell[]} cells */
  put(cells) {
    for (const cell of cells) {
      cell.why = "";
      cell.state = this.failing ? "failed" : "waiting";
      this.waiting.set(cell.key, cell);
    }
    if (this.failing) this.tell();
    else this.go();
  }

  /** Resolves when everything is kept or told, or when it failed; at once where nothing is under way. */
  rest() { return this.idle || this.failing ? Promise.resolve() : new Promise((done) => { this.resting.push(done); }); }

  now() {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    this.go();
  }

  async go() {
    if (this.isOut || this.failing || !this.waiting.size) return;
    const batch = [...this.waiting.values()].map((cell) => ({ cell, text: cell.text, was: cell.kept }));
    this.waiting.clear();
    this.isOut = true;
    this.turn += 1;
    const cells = JSON.stringify(batch.map(({ cell, text, was }) => [cell.code, cell.label, text, was]));
    const form = new FormData();
    form.set("cells", cells);
    let found = null;
    let refused = null;
    try {
      found = await this.world.send(form, cells.length < MOST_ALIVE); // sent to the end even when the page is left
    } catch (error) {
      refused = refusal(error);
    }
    this.isOut = false;
    this.turn += 1;
    if (found) this.read(found, batch);
    else if (refused) await this.failed(batch, refused);
    this.go();
    if (this.idle || this.failing) this.resting.splice(0).forEach((done) => done());
  }

  /**
   * @param {Found} found
   * @param {Sent[]} batch
   */
  read(found, batch) {
    if (this.wait !== FIRST_WAIT) this.told.failing("", 0);
    this.wait = FIRST_WAIT;
    for (const seen of found.kept) {
      const cell = this.cellOf(seen);
      cell.kept = seen.text;
      cell.maybe.clear();
      if (cell.text !== seen.text) continue;
      if (!cell.isTyping) cell.show(seen.judged, seen.text, seen);
      cell.state = "kept";
    }
    for (const seen of found.clashes) this.clash(this.cellOf(seen), seen.text);
    for (const { at, why } of found.refused) {
      const { cell, text } = batch[at];
      if (cell.text !== text) continue;
      cell.why = `Not kept. ${why}`;
      cell.state = "refused";
    }
    this.told.kept(found.kept.map((seen) => this.cellOf(seen)), found.refused, found.told);
  }

  /**
   * @param {Seen} seen
   * @returns {Cell}
   */
  cellOf(seen) {
    return /** @type {Cell} */ (this.cells.get(keyOf(seen.code, seen.label)));
  }

  /**
   * Another text stands on the disk than the one that this window saw there.
   * @param {Cell} cell
   * @param {string} text
   */
  clash(cell, text) {
    if (cell.maybe.has(text) || cell.text === text) {
      cell.kept = text; // our own, whose answer was lost
      this.waiting.set(cell.key, cell);
      return;
    }
    this.waiting.delete(cell.key);
    cell.stands = text;
    cell.state = "clash";
    this.told.clash(cell);
  }

  /**
   * No answer, a full disk, a program started again: everything goes back to wait, behind what is newer.
   * @param {Sent[]} batch
   * @param {Refused} refused
   */
  async failed(batch, refused) {
    for (const { cell, text } of batch) {
      if (refused.status === 0 || refused.status >= 500) cell.maybe.add(text);
      if (!this.waiting.has(cell.key)) this.waiting.set(cell.key, cell);
    }
    if ([401, 403].includes(refused.status) && (await this.world.renew())) {
      this.timer = setTimeout(() => this.now(), 0);
      return;
    }
    for (const cell of this.waiting.values()) cell.state = "failed";
    this.words = refused.message;
    this.timer = setTimeout(() => this.now(), this.wait);
    this.wait = Math.min(2 * this.wait, LONGEST_WAIT);
    this.tell();
  }

  tell() { this.told.failing(this.words, this.waiting.size); }
}
