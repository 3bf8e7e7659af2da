// Recording on the Walkthrough page: who hears what. The recorder's keys are heard on the page and on its board.

import { all, around, get } from "./kit.js";
import { actOf } from "./record_keys.js";
import { canRecord } from "./record_microphone.js";
import { Part, onBoard } from "./record_part.js";
import { Recorder } from "./recorder.js";

const CONTROLS = "input, select, textarea, summary, audio, video, a, button";

const place = get("recorder");
const board = get("board", HTMLIFrameElement);
const key = get("step", HTMLButtonElement);
const parts = all(document, "[data-part]").map((item) => new Part(item));

/** The next part that is not recorded: after one, else from the first on. @param {Part} [after] */
function following(after) {
  const at = after ? parts.indexOf(after) + 1 : 0;
  return [...parts.slice(at), ...parts.slice(0, at)].find((one) => one !== after && !one.saw);
}

const recorder = new Recorder(following);

/** @param {Event} event */
function isElsewhere(event) {
  const control = around(event, CONTROLS); // of this page: the board's own are no other control
  return control !== null && !place.contains(control);
}

/** @param {KeyboardEvent} event */
function keyed(event) {
  const { isOpen, isRecording } = recorder;
  const act = actOf(event, { isOpen, isRecording, isElsewhere: isElsewhere(event) });
  if (!act) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  if (event.type !== "keydown" || event.repeat) return;
  if (act === "close") recorder.close();
  else if (!key.disabled) recorder.press();
}

/** While a part is recorded the board is stepped only together with the recording. @param {MouseEvent} event */
function clicked(event) {
  if (!recorder.isRecording || !event.isTrusted) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  if (onBoard("next")?.contains(/** @type {Node} */ (event.target))) recorder.press();
}

/** @param {Window} heard */
function listenToKeys(heard) {
  heard.addEventListener("keydown", keyed, true);
  heard.addEventListener("keyup", keyed, true);
}

function listenToBoard() {
  if (!board.contentWindow) return;
  listenToKeys(board.contentWindow);
  board.contentWindow.addEventListener("click", clicked, true);
}

listenToKeys(window);
board.addEventListener("load", listenToBoard);
if (board.contentDocument?.readyState === "complete") listenToBoard();
key.addEventListener("click", () => recorder.press());
get("again").addEventListener("click", () => recorder.start());
get("record-first").addEventListener("click", () => recorder.open(following() ?? parts[0]));
get("throw-away").addEventListener("click", () => recorder.close());
document.addEventListener("click", (event) => {
  const item = around(event, "[data-record]")?.closest("[data-part]");
  const part = parts.find((one) => one.item === item);
  if (part) recorder.open(part);
});

/** Record the part again in which a number was heard otherwise. @param {Event} event */
function sayAgain(event) {
  const label = around(event, "[data-say-again]")?.dataset.sayAgain;
  const part = parts.find((one) => one.label === label);
  if (!part) return;
  event.preventDefault();
  recorder.open(part);
}

const can = canRecord();
if (can) document.addEventListener("click", sayAgain);
get("no-microphone").hidden = can;
get("record-first").hidden = !can;
if (can) for (const part of parts) part.offer();
