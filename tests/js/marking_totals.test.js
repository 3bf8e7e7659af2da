// Right of tried.

import assert from "node:assert/strict";
import { test } from "node:test";

import { counted } from "../../src/onewhole/web/static/marking_totals.js";

test("another form counts as right; a blank and a cell that is not judged yet are not tried", () => {
  assert.equal(counted(["right", "form", "wrong", "unreadable", "blank", ""]), "2 of 4");
  assert.equal(counted([]), "0 of 0");
});
