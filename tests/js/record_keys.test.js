// Which keys are the recorder's.

import assert from "node:assert/strict";
import test from "node:test";

import { actOf } from "../../src/onewhole/web/static/record_keys.js";

const OPEN = { isOpen: true, isRecording: false, isElsewhere: false };

test("Space and the right arrow step, Escape closes", () => {
  assert.equal(actOf({ key: " " }, OPEN), "press");
  assert.equal(actOf({ key: "ArrowRight" }, OPEN), "press");
  assert.equal(actOf({ key: "Escape" }, OPEN), "close");
  for (const key of ["Enter", "ArrowLeft", "a", "Tab"]) assert.equal(actOf({ key }, OPEN), null, key);
});

test("while the recorder is closed every key is the page's", () => {
  for (const key of [" ", "ArrowRight", "Escape"]) assert.equal(actOf({ key }, { ...OPEN, isOpen: false }), null);
});

test("another control keeps Space, until a part is recorded; Escape is always the recorder's", () => {
  const elsewhere = { ...OPEN, isElsewhere: true };
  assert.equal(actOf({ key: " " }, elsewhere), null);
  assert.equal(actOf({ key: "Escape" }, elsewhere), "close");
  assert.equal(actOf({ key: " " }, { ...elsewhere, isRecording: true }), "press");
});

test("with Control, Alt, Command or Shift a key is the browser's", () => {
  for (const held of ["ctrlKey", "altKey", "metaKey", "shiftKey"]) assert.equal(actOf({ key: " ", [held]: true }, OPEN), null, held);
});
