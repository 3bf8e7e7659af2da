// A part as it is taken: presses, marks, the end.

import assert from "node:assert/strict";
import test from "node:test";

import { Take, clockTime } from "../../src/onewhole/web/static/record_take.js";

test("each press is a mark, counted from where the sound began; the press on the last step ends", () => {
  const take = new Take(3, 1000);
  take.begin(1040);
  assert.equal(take.press(2040.4), "step");
  assert.equal(take.isLast, false);
  assert.equal(take.press(3040.6), "step");
  assert.equal(take.isLast, true);
  assert.equal(take.press(5000), "end");
  assert.deepEqual(take.marks, [1000, 2001]);
  assert.equal(take.at, 2);
});

test("what is pressed twice in a moment counts once", () => {
  const take = new Take(4, 0);
  assert.equal(take.press(100), "nothing", "the press that began it may bounce too");
  assert.equal(take.press(150), "step");
  assert.equal(take.press(299), "nothing");
  assert.equal(take.press(300), "step");
  assert.deepEqual(take.marks, [150, 300]);
});

test("a part of one step ends with its first press", () => {
  assert.equal(new Take(1, 0).press(500), "end");
});

test("the time goes on from where the sound began, and never before", () => {
  const take = new Take(1, 1000);
  take.begin(1100);
  assert.equal(take.passed(1050), 0);
  assert.equal(clockTime(take.passed(84500)), "1:23");
  assert.equal(clockTime(0), "0:00");
  assert.equal(clockTime(600_000), "10:00");
});
