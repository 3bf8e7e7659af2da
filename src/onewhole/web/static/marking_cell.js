// One cell of the grid: what is typed, what is kept on the disk, and what is shown of it.

import { find, fragment } from "./kit.js";

/** A text judged: verdict, its sign, the formula as markup of the server's (null: the text itself), all of it in words.
 * @typedef {{ verdict: string, sign: string, mathml: string | null, said: string }} Judged */
/** A cell as the server has it; `read` says in words how the teacher reads it.
 * @typedef {{ code: string, label: string, text: string, readAs: string | null, read: string, judged: Judged }} Seen */
/** @typedef {"" | "kept" | "waiting" | "failed" | "refused" | "clash"} State */

/** @type {Record<State, string>} */
const SAID = {
  kept: "Kept.",
  waiting: "Not kept yet.",
  failed: "Not kept: it is tried again.",
  refused: "Not kept.",
  clash: "Not kept: changed in another window.",
  "": "",
};
/** @type {Judged} */
const UNJUDGED = { verdict: "", sign: "", mathml: null, said: "" };

/**
 * The key of a cell among all cells.
 * @param {string | undefined} code
 * @param {string | undefined} label
 */
export const keyOf = (code, label) => `${code} ${label}`;

export class Cell {
  /**
   * @param {HTMLElement} td
   * @param {number} row
   * @param {number} column
   */
  constructor(td, row, column) {
    this.td = td;
    this.input = find(td, "input", HTMLInputElement);
    this.formula = find(td, ".formula");
    this.sign = find(td, ".sign");
    this.heard = { said: find(td, ".heard-said"), read: find(td, ".heard-read"), state: find(td, ".heard-state") };
    this.code = td.dataset.code ?? "";
    this.label = td.dataset.label ?? "";
    this.row = row;
    this.column = column;
    this.kept = td.dataset.text ?? ""; // what the server said is on the disk
    this.text = this.kept; // what the teacher left in the cell
    /** @type {string | null} */
    this.stands = null; // what another window wrote, while the two differ
    this.why = "";
    /** @type {Set<string>} */
    this.maybe = new Set(); // texts that were sent and never answered: they may be on the disk
    this.editing = false;
    /** @type {string | null} */
    this.foretold = null; // whose writing is shown, while the teacher looks at predictions
    this.readAs = td.dataset.read ?? null;
    this.read = this.heard.read.textContent ?? "";
    this.judged = { verdict: td.dataset.verdict ?? "", sign: this.sign.textContent ?? "", said: this.heard.said.textContent ?? "" };
    this.judgedText = this.text;
    this.hear();
  }

  get key() { return keyOf(this.code, this.label); }
  get name() { return this.input.getAttribute("aria-label") ?? ""; }

  /** What is typed and not the cell's yet. */
  get isTyping() { return this.input.value !== this.text; }

  get state() { return /** @type {State} */ (this.td.dataset.state ?? ""); }

  set state(state) {
    this.td.dataset.state = state === "kept" && !this.kept ? "" : state;
    this.hear();
  }

  /** Show whether what is typed is not the cell's yet: then nothing of it shows as kept. */
  mark() {
    if (this.td.hasAttribute("data-typing") === this.isTyping) return;
    this.td.toggleAttribute("data-typing", this.isTyping);
    this.hear();
  }

  /**
   * The text is the teacher's now; what is shown of it is up to `show`.
   * @param {string} text
   */
  write(text) {
    this.text = text;
    if (this.input.value !== text) this.input.value = text;
    this.editing = false;
    this.mark();
    if (this.judgedText !== text) this.show(UNJUDGED, text);
  }

  /**
   * Show a judgement of a text: sign, formula (or the text as it is), words.
   * @param {Judged} judged
   * @param {string} text
   * @param {{ readAs: string | null, read: string }} [reading] how the teacher reads it
   */
  show(judged, text, reading = { readAs: null, read: "" }) {
    this.judged = judged;
    this.judgedText = text;
    this.readAs = reading.readAs;
    this.read = reading.read;
    this.td.dataset.verdict = judged.verdict;
    this.sign.textContent = text ? judged.sign : "";
    this.formula.replaceChildren(judged.mathml ? fragment(judged.mathml) : text);
    this.hear();
  }

  /**
   * The cell is as the server has it.
   * @param {Seen} seen
   */
  take(seen) {
    this.kept = seen.text;
    this.write(seen.text);
    this.show(seen.judged, seen.text, seen);
    this.state = "kept";
  }

  hear() {
    const { said, read, state } = this.heard;
    said.textContent = this.judgedText ? this.judged.said : "";
    read.textContent = this.judgedText ? this.read : "";
    state.textContent = this.td.hasAttribute("data-typing") ? SAID.waiting : this.why || SAID[this.state];
  }
}
