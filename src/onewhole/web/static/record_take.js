// One taking of a part: which step is spoken, and when the board was stepped.

/** Two presses closer than this are one, in milliseconds. */
const TWICE = 150;

export class Take {
  /**
   * @param {number} steps how many the part has
   * @param {number} now a moment, in milliseconds, as in all that follows
   */
  constructor(steps, now) {
    this.steps = steps;
    this.at = 0; // the step that shows
    /** @type {number[]} */
    this.marks = []; // when the board was stepped, since the sound began
    this.began = now;
    this.last = now; // the last press
  }

  /** The sound begins a little after it was asked for. @param {number} now */
  begin(now) {
    this.began = now;
  }

  get isLast() { return this.at + 1 >= this.steps; }

  /**
   * The key was pressed: step the board, or end after the last step. What is pressed twice counts once.
   * @param {number} now
   * @returns {"step" | "end" | "nothing"}
   */
  press(now) {
    if (now - this.last < TWICE) return "nothing";
    this.last = now;
    if (this.isLast) return "end";
    this.marks.push(Math.round(now - this.began));
    this.at += 1;
    return "step";
  }

  /** @param {number} now */
  passed(now) {
    return Math.max(0, now - this.began);
  }
}

/**
 * Write a length as on a clock: 83400 is 1:23.
 * @param {number} milliseconds
 */
export function clockTime(milliseconds) {
  const seconds = Math.floor(milliseconds / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
}
