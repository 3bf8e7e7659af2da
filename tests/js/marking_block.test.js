// A block of cells: which key stretches it where, and which cells are in it.

import assert from "node:assert/strict";
import test from "node:test";

import { stretched, within } from "../../src/onewhole/web/static/marking_block.js";

const LAST = { row: 26, column: 19 };
/**
 * @param {string} key
 * @param {{ row: number, column: number }} spot
 * @param {boolean} [ctrlKey]
 */
const by = (key, spot, ctrlKey = false) => stretched({ key, ctrlKey, metaKey: false }, spot, LAST);

test("arrows stretch it by one cell, and stop at the edge", () => {
  assert.deepEqual(by("ArrowDown", { row: 3, column: 4 }), { row: 4, column: 4 });
  assert.deepEqual(by("ArrowUp", { row: 0, column: 4 }), { row: 0, column: 4 });
  assert.deepEqual(by("ArrowRight", { row: 3, column: 19 }), { row: 3, column: 19 });
  assert.deepEqual(by("ArrowLeft", { row: 3, column: 4 }), { row: 3, column: 3 });
});

test("with Ctrl, and with Home and End, it goes to the edge", () => {
  assert.deepEqual(by("ArrowDown", { row: 3, column: 4 }, true), { row: 26, column: 4 });
  assert.deepEqual(by("ArrowLeft", { row: 3, column: 4 }, true), { row: 3, column: 0 });
  assert.deepEqual(by("Home", { row: 3, column: 4 }), { row: 3, column: 0 });
  assert.deepEqual(by("End", { row: 3, column: 4 }, true), LAST);
  assert.equal(by("Delete", { row: 3, column: 4 }), null);
});

test("the cells between two corners are in it, whichever way it was stretched", () => {
  const [from, to] = [{ row: 5, column: 2 }, { row: 3, column: 4 }];
  for (const [row, column, isIn] of /** @type {[number, number, boolean][]} */ ([[3, 2, true], [5, 4, true], [4, 3, true], [2, 3, false], [4, 5, false]])) {
    assert.equal(within({ row, column }, from, to), isIn, `${row}, ${column}`);
    assert.equal(within({ row, column }, to, from), isIn, `${row}, ${column}`);
  }
});
