// The line under the grid: what is shown and said of the cell one is in.

import { find, get } from "./kit.js";

/** @typedef {import("./marking_grid.js").Grid} Grid */

const REST = 500; // milliseconds of rest in the typing before it is read aloud

export class Status {
  /** @param {Grid} grid */
  constructor(grid) {
    this.grid = grid;
    this.places = Object.fromEntries(["whose", "formula", "sign", "words"].map((name) => [name, find(grid.bar, `.${name}`)]));
    /** @type {ReturnType<typeof setTimeout> | undefined} */
    this.resting = undefined;
  }

  /** @param {() => void} rested called when the typing rests */
  tell(rested) {
    const { here, head } = this.grid;
    const { judged } = here;
    const text = here.input.value;
    const isFresh = here.judgedText === text;
    const words = isFresh && text ? judged.said : "";
    this.places.whose.textContent = `${here.name}, ${head.typed}:`;
    this.places.formula.replaceChildren(...(isFresh ? here.formula.cloneNode(true).childNodes : [text]));
    this.places.sign.textContent = isFresh && text ? judged.sign : "";
    const by = here.foretold && here.editing ? `As ${here.foretold} would write it; * for the next.` : "";
    this.places.words.textContent = [words, isFresh ? here.read : "", by, here.why].filter(Boolean).join(" ");
    clearTimeout(this.resting);
    this.resting = setTimeout(() => {
      if (here === this.grid.here && here.editing && words) get("heard").textContent = words;
      rested();
    }, REST);
  }
}
