// What a key does while an answer on paper is looked at.

import assert from "node:assert/strict";
import { test } from "node:test";

import { photoAct } from "../../src/onewhole/web/static/photos_keys.js";

const FREE = { typing: false, onControl: false, choices: 3 };

test("a digit chooses a reading that is there, 0 none", () => {
  assert.equal(photoAct({ key: "1" }, FREE), "choose");
  assert.equal(photoAct({ key: "0" }, FREE), "choose");
  assert.equal(photoAct({ key: "4" }, FREE), null);
  assert.equal(photoAct({ key: "2" }, { ...FREE, choices: 1 }), null);
});

test("Enter begins to type, and presses the button that one is on", () => {
  assert.equal(photoAct({ key: "Enter" }, FREE), "type");
  assert.equal(photoAct({ key: "Enter" }, { ...FREE, onControl: true }), null);
});

test("while one types every key is a letter, but Escape leaves the field", () => {
  const typing = { ...FREE, typing: true };
  assert.equal(photoAct({ key: "1" }, typing), null);
  assert.equal(photoAct({ key: "Backspace" }, typing), null);
  assert.equal(photoAct({ key: "Enter" }, typing), null);
  assert.equal(photoAct({ key: "Escape" }, typing), "leave");
});

test("Backspace takes the last one back; keys of the browser stay its own", () => {
  assert.equal(photoAct({ key: "Backspace" }, FREE), "back");
  assert.equal(photoAct({ key: "1", ctrlKey: true }, FREE), null);
  assert.equal(photoAct({ key: "ArrowDown" }, FREE), null);
});
