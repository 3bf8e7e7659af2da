// What every page needs of kit.js, as far as it needs no page.

import assert from "node:assert/strict";
import test from "node:test";

import { Refused, calmly, refusal } from "../../src/onewhole/web/static/kit.js";

test("a refusal says what and what to do next, each as a sentence", () => {
  assert.equal(new Refused(422, { refused: "The line is empty", remedy: "Type one" }).message, "The line is empty. Type one.");
  assert.equal(new Refused(422, { refused: "Is it so?", remedy: "" }).message, "Is it so?");
});

test("a refusal is told, a fault goes on", () => {
  const refused = new Refused(0, { refused: "No" });
  assert.equal(refusal(refused), refused);
  assert.throws(() => refusal(new TypeError("a fault")), TypeError);
});

test("what is done calmly is done once, with what was given last", async () => {
  /** @type {number[]} */
  const seen = [];
  await new Promise((done) => {
    const run = calmly((/** @type {number} */ one) => { seen.push(one); done(null); }, 0);
    run(1);
    run(2);
  });
  assert.deepEqual(seen, [2]);
});
