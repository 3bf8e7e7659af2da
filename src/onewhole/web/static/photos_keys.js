// What a key does while an answer on paper is looked at; nothing here touches the page.

/** @typedef {"choose" | "type" | "back" | "leave"} PhotoAct */

/**
 * The act of a key, or null where the key is the browser's.
 * @param {{ key: string, ctrlKey?: boolean, altKey?: boolean, metaKey?: boolean }} event
 * @param {{ typing: boolean, onControl: boolean, choices: number }} place `typing` in a field of text, `onControl` on
 *   a button or link, and how many readings can be chosen
 * @returns {PhotoAct | null}
 */
export function photoAct(event, place) {
  const { key } = event;
  if (event.ctrlKey || event.altKey || event.metaKey) return null;
  if (place.typing) return key === "Escape" ? "leave" : null;
  if (key === "0" || (/^[1-9]$/.test(key) && Number(key) <= place.choices)) return "choose";
  if (key === "Enter" && !place.onControl) return "type";
  if (key === "Backspace") return "back";
  return null;
}
