// Which key does what in the grid. A key that moves in a text that is being typed is left to it.

/** @typedef {"next" | "up" | "down" | "left" | "right" | "rowStart" | "rowEnd" | "first" | "last" | "foretell" | "correct" | "keys" | "asItWas" | "takeBack" | "column"} Act */
/** @typedef {{ key: string, ctrlKey?: boolean, metaKey?: boolean, altKey?: boolean, shiftKey?: boolean, isComposing?: boolean }} Pressed */
/** The cell one is in: is it being typed, is a prediction shown, and where do caret and text end.
 * @typedef {{ editing: boolean, isForetold: boolean, from: number | null, to: number | null, length: number }} Place */

/** @type {Record<string, Act | undefined>} */
const PLAIN = {
  Enter: "next",
  ArrowUp: "up",
  ArrowDown: "down",
  ArrowLeft: "left",
  ArrowRight: "right",
  Home: "rowStart",
  End: "rowEnd",
  "*": "foretell",
  "+": "correct",
  "?": "keys",
  Escape: "asItWas",
};
/** @type {Record<string, Act | undefined>} */
const WITH_CONTROL = { Home: "first", End: "last" };
const ONLY_AT_REST = new Set(["*", "+", "?", "Home", "End"]);

/**
 * What a key asks for; null leaves it to the text.
 * @param {Pressed} pressed
 * @param {Place} place
 * @returns {Act | null}
 */
export function actOf(pressed, place) {
  const { key } = pressed;
  if (pressed.altKey || pressed.isComposing) return null;
  if (pressed.ctrlKey || pressed.metaKey) return key === "z" && !place.editing ? "takeBack" : WITH_CONTROL[key] ?? null;
  if (pressed.shiftKey && key === "Enter") return "column";
  if (pressed.shiftKey && key.length > 1) return null;
  return place.editing && belongsToText(key, place) ? null : PLAIN[key] ?? null;
}

/**
 * Whether a key moves or writes in the text that is being typed.
 * @param {string} key
 * @param {Place} place
 */
function belongsToText(key, { isForetold, from, to, length }) {
  if (ONLY_AT_REST.has(key)) return !(isForetold && key.length === 1);
  if (key === "ArrowLeft") return !(from === 0 && to === 0);
  return key === "ArrowRight" && from !== length;
}
