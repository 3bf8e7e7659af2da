// How loud a sound is, on waves whose loudness is known.

import assert from "node:assert/strict";
import test from "node:test";

import { barOf, isHeard, measured, wordOf } from "../../src/onewhole/web/static/record_loudness.js";

/** A sine of whole periods. @param {number} height */
const sine = (height) => Float32Array.from({ length: 2000 }, (_, at) => height * Math.sin((2 * Math.PI * at) / 100));

test("a sine as high as can be lies 3.01 decibels below the loudest possible, and 20 for a tenth of it", () => {
  const full = measured(sine(1));
  assert.ok(Math.abs(full.decibels + 3.0103) < 0.001, String(full.decibels));
  assert.ok(Math.abs(measured(sine(0.1)).decibels - (full.decibels - 20)) < 0.001);
  assert.ok(Math.abs(full.peak - 1) < 0.001);
});

test("silence is no voice and leaves the bar empty; the bar never leaves its frame", () => {
  const { decibels, peak } = measured(new Float32Array(2000));
  assert.equal(isHeard(decibels), false);
  assert.deepEqual([peak, barOf(decibels), barOf(0)], [0, 0, 100]);
});

test("the word: good, silent after a while, too loud before all", () => {
  assert.equal(wordOf(0.5, 1500), "Good");
  assert.match(wordOf(0, 1501), /^Silent/);
  assert.match(wordOf(0.98, 9000), /^Too loud/);
});
