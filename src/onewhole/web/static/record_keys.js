// Which keys are the recorder's: Escape, and the keys that step, unless another control has them.

/** @typedef {{ key: string, ctrlKey?: boolean, altKey?: boolean, metaKey?: boolean, shiftKey?: boolean }} Pressed */
/** Whether the recorder is open, whether it records, whether the focus is on a control outside of it.
 * @typedef {{ isOpen: boolean, isRecording: boolean, isElsewhere: boolean }} Now */

/**
 * What a key asks for; null leaves it to the page.
 * @param {Pressed} pressed
 * @param {Now} now
 * @returns {"press" | "close" | null}
 */
export function actOf(pressed, { isOpen, isRecording, isElsewhere }) {
  if (!isOpen || pressed.ctrlKey || pressed.altKey || pressed.metaKey || pressed.shiftKey) return null;
  if (pressed.key === "Escape") return "close";
  if (pressed.key !== " " && pressed.key !== "ArrowRight") return null;
  return isRecording || !isElsewhere ? "press" : null;
}
