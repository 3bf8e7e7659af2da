// What is typed is judged by the server while one types: one question at a time, always of the cell that was typed last.

import { refusal } from "./kit.js";

/** @typedef {import("./marking_cell.js").Cell} Cell */
/** @typedef {import("./marking_cell.js").Judged} Judged */

const REMEMBERED = 3000;

export class Judge {
  /**
   * @param {(label: string, text: string) => Promise<Judged>} ask
   * @param {(cell: Cell) => void} shown hears when a cell shows its judgement
   */
  constructor(ask, shown) {
    this.ask = ask;
    this.shown = shown;
    /** @type {Cell | null} */
    this.wanted = null;
    this.isOut = false;
    /** @type {Map<string, Judged>} */
    this.known = new Map();
  }

  /** @param {Cell} cell */
  look(cell) {
    this.wanted = cell;
    if (!this.isOut) this.go();
  }

  async go() {
    this.isOut = true;
    while (this.wanted) {
      const cell = this.wanted;
      this.wanted = null;
      const text = cell.input.value;
      const judged = await this.of(cell.label, text);
      if (!judged || cell.input.value !== text) continue;
      cell.show(judged, text);
      this.shown(cell);
    }
    this.isOut = false;
  }

  /**
   * @param {string} label
   * @param {string} text
   * @returns {Promise<Judged | null>} null where no answer came: the text stays, and saving tells of it
   */
  async of(label, text) {
    const key = `${label}\n${text}`;
    const known = this.known.get(key);
    if (known) return known;
    try {
      const judged = await this.ask(label, text);
      if (this.known.size > REMEMBERED) this.known.clear();
      this.known.set(key, judged);
      return judged;
    } catch (error) {
      refusal(error);
      return null;
    }
  }
}
