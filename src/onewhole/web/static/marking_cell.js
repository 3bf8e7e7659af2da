// One cell of the grid: what is typed, what is kept on the disk, and what is shown of it.

const SAID = { kept: "Kept.", waiting: "Not kept yet.", failed: "Not kept: it is tried again.", refused: "Not kept.", clash: "Not kept: changed in another window.", "": "" };

export class Cell {
  constructor(td, row, column) {
    this.td = td;
    this.input = td.querySelector("input");
    this.code = td.dataset.code;
    this.label = td.dataset.label;
    this.row = row;
    this.column = column;
    this.kept = td.dataset.text; // what the server said is on the disk
    this.text = this.kept; // what the teacher left in the cell
    this.stands = null; // what another window wrote, while the two differ
    this.why = "";
    this.maybe = new Set(); // texts that were sent and never answered: they may be on the disk
    this.editing = false;
    this.foretold = null;
    this.readAs = td.dataset.read ?? null;
    const formula = td.querySelector(".formula");
    const said = td.querySelector(".only-heard").textContent.replace(/( Read as .*)? Kept\.$/, "");
    this.judged = { said, sign: td.querySelector(".sign").textContent, mathml: formula.querySelector("math") ? formula.innerHTML : null };
    this.judgedText = this.text;
  }

  get key() { return `${this.code} ${this.label}`; }
  get name() { return this.input.getAttribute("aria-label"); }
  get state() { return this.td.dataset.state; }

  set state(state) {
    this.td.dataset.state = state === "kept" && !this.kept ? "" : state;
    this.hear();
  }

  /** Say whether what is typed is not the cell's yet: then nothing of it shows as kept. */
  mark() {
    const typing = this.input.value !== this.text;
    if (this.td.hasAttribute("data-typing") === typing) return;
    this.td.toggleAttribute("data-typing", typing);
    this.hear();
  }

  /** The text is the teacher's now; what is shown of it is up to `show`. */
  write(text) {
    this.text = text;
    if (this.input.value !== text) this.input.value = text;
    this.editing = false;
    this.mark();
    if (this.judgedText !== text) this.show({ verdict: "", sign: "", mathml: null, said: "" }, text);
  }

  /** Show a judgement of a text: sign, formula (or the text as it is), words. */
  show(judged, text, readAs = null) {
    this.judged = judged;
    this.judgedText = text;
    this.readAs = readAs;
    this.td.dataset.verdict = judged.verdict;
    this.td.querySelector(".sign").textContent = text ? judged.sign : "";
    put(this.td.querySelector(".formula"), judged.mathml, text);
    this.hear();
  }

  hear() {
    const read = this.readAs === null ? "" : ` Read as ${this.readAs}.`;
    const said = this.judgedText ? `${this.judged.said}${read} ` : "";
    const typing = this.td.hasAttribute("data-typing");
    this.td.querySelector(".only-heard").textContent = `${said}${typing ? SAID.waiting : this.why || SAID[this.state]}`;
  }
}

/** Put a formula of the server's into a place; where there is none, the text. */
export function put(place, mathml, text) {
  if (mathml) place.innerHTML = mathml;
  else place.textContent = text;
}
