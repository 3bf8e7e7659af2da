// Cells on their way to the disk: one request at a time, the latest text of each cell, again until it is kept.

import { Refused, ask } from "./kit.js";

const FIRST_WAIT = 1000;
const LONGEST_WAIT = 8000;
const MOST_ALIVE = 15000; // characters; a browser takes 64 KiB

export class Saving {
  /** `told` hears: `kept(cells)`, `clash(cell)`, `failing(words, count)` (no words: it goes on again). */
  constructor(address, cells, told) {
    this.address = address;
    this.cells = cells;
    this.told = told;
    this.waiting = new Map();
    this.sent = null;
    this.wait = FIRST_WAIT;
    this.timer = 0;
    this.turn = 0; // grows whenever a request goes out or comes back
    this.resting = [];
  }

  get idle() { return !this.sent && !this.waiting.size; }

  holds(cell) { return this.waiting.has(cell.key) || Boolean(this.sent?.has(cell.key)); }

  put(cells) {
    for (const cell of cells) {
      cell.why = "";
      cell.state = this.timer ? "failed" : "waiting";
      this.waiting.set(cell.key, cell);
    }
    if (this.timer) this.tell();
    else this.go();
  }

  get failing() { return Boolean(this.timer); }

  /** Resolves when everything is kept or told, or when it failed; at once where nothing is under way. */
  rest() { return this.idle || this.failing ? Promise.resolve() : new Promise((done) => { this.resting.push(done); }); }

  now() {
    clearTimeout(this.timer);
    this.timer = 0;
    this.go();
  }

  async go() {
    if (this.sent || this.timer || !this.waiting.size) return;
    const batch = [...this.waiting.values()].map((cell) => ({ cell, text: cell.text, was: cell.kept }));
    this.waiting.clear();
    this.sent = new Set(batch.map((one) => one.cell.key));
    this.turn += 1;
    const form = new FormData();
    form.set("cells", JSON.stringify(batch.map(({ cell, text, was }) => [cell.code, cell.label, text, was])));
    let found = null;
    let refused = null;
    try {
      const keepalive = form.get("cells").length < MOST_ALIVE; // sent to the end even when the page is left
      found = await ask(`${this.address}/keep`, form, { keepalive });
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      refused = error;
    }
    this.sent = null;
    this.turn += 1;
    if (found) this.read(found, batch);
    else await this.failed(batch, refused);
    this.go();
    if (this.idle || this.failing) this.resting.splice(0).forEach((done) => done());
  }

  read(found, batch) {
    if (this.wait !== FIRST_WAIT) this.told.failing("", 0);
    this.wait = FIRST_WAIT;
    const kept = found.kept.map((seen) => {
      const cell = this.cells.get(`${seen.code} ${seen.label}`);
      cell.kept = seen.text;
      cell.maybe.clear();
      if (cell.text === seen.text) {
        if (cell.input.value === seen.text) cell.show(seen.judged, seen.text, seen.readAs);
        cell.state = "kept";
      }
      return cell;
    });
    for (const seen of found.clashes) {
      const cell = this.cells.get(`${seen.code} ${seen.label}`);
      if (cell.maybe.has(seen.text) || cell.text === seen.text) {
        cell.kept = seen.text; // our own, whose answer was lost
        this.waiting.set(cell.key, cell);
      } else {
        this.waiting.delete(cell.key);
        cell.stands = seen.text;
        cell.state = "clash";
        this.told.clash(cell);
      }
    }
    for (const { at, why } of found.refused) {
      const { cell, text } = batch[at];
      if (cell.text !== text) continue;
      cell.why = `Not kept. ${why}`;
      cell.state = "refused";
    }
    this.told.kept(kept, found.refused);
  }

  /** No answer, a full disk, a program started again: everything goes back to wait, behind what is newer. */
  async failed(batch, refused) {
    for (const { cell, text } of batch) {
      if (refused.status === 0 || refused.status >= 500) cell.maybe.add(text);
      if (!this.waiting.has(cell.key)) this.waiting.set(cell.key, cell);
    }
    if ([401, 403].includes(refused.status) && (await newSeal())) {
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

/** After the program was started again and its address opened in another window, take the new session's seal. */
async function newSeal() {
  const old = document.querySelector('meta[name="seal"]');
  try {
    const answer = await fetch(location.href, { credentials: "same-origin" });
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const seal = page.querySelector('meta[name="seal"]')?.content;
    if (!answer.ok || !seal || seal === old.content) return false;
    old.content = seal;
    return true;
  } catch {
    return false;
  }
}
