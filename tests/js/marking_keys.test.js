// Which key does what in the grid: the table of the page's own list of keys.

import assert from "node:assert/strict";
import test from "node:test";

import { actOf } from "../../src/onewhole/web/static/marking_keys.js";

const REST = { editing: false, isForetold: false, from: 0, to: 4, length: 4 };
const MIDST = { ...REST, editing: true, from: 2, to: 2 };

test("a cell at rest: every key of the list", () => {
  const acts = { Enter: "next", ArrowUp: "up", ArrowDown: "down", ArrowLeft: "left", ArrowRight: "right", Home: "rowStart", End: "rowEnd", "*": "foretell", "+": "correct", "?": "keys", Escape: "asItWas" };
  for (const [key, act] of Object.entries(acts)) assert.equal(actOf({ key }, REST), act, key);
  for (const key of ["3", "/", " ", "-", "Tab"]) assert.equal(actOf({ key }, REST), null, key);
});

test("in a text that is typed, the keys that move and write in it are left to it", () => {
  for (const key of ["ArrowLeft", "ArrowRight", "Home", "End", "*", "+", "?"]) assert.equal(actOf({ key }, MIDST), null, key);
  assert.equal(actOf({ key: "ArrowLeft" }, { ...MIDST, from: 0, to: 0 }), "left");
  assert.equal(actOf({ key: "ArrowRight" }, { ...MIDST, from: 4, to: 4 }), "right");
  for (const key of ["Enter", "ArrowUp", "ArrowDown", "Escape"]) assert.notEqual(actOf({ key }, MIDST), null, key);
});

test("while a prediction is shown, * goes on to the next one and Home stays in the text", () => {
  const foretold = { ...MIDST, isForetold: true };
  assert.equal(actOf({ key: "*" }, foretold), "foretell");
  assert.equal(actOf({ key: "Home" }, foretold), null);
});

test("keys with other keys", () => {
  assert.equal(actOf({ key: "Enter", shiftKey: true }, REST), "column");
  assert.equal(actOf({ key: "ArrowLeft", shiftKey: true }, REST), null);
  assert.equal(actOf({ key: "*", shiftKey: true }, REST), "foretell");
  assert.equal(actOf({ key: "z", ctrlKey: true }, REST), "takeBack");
  assert.equal(actOf({ key: "z", metaKey: true }, MIDST), null);
  assert.equal(actOf({ key: "Home", ctrlKey: true }, MIDST), "first");
  assert.equal(actOf({ key: "End", ctrlKey: true }, REST), "last");
  assert.equal(actOf({ key: "Enter", altKey: true }, REST), null);
  assert.equal(actOf({ key: "Enter", isComposing: true }, REST), null);
});
