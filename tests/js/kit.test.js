// What every page needs of kit.js, as far as it needs no page.

import assert from "node:assert/strict";
import test from "node:test";

import { Refused, calmly, latest, refusal } from "../../src/onewhole/web/static/kit.js";

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

test("of what is asked again and again, one runs at a time, and the last one always", async () => {
  let typed = "";
  /** @type {string[]} */
  const seen = [];
  /** @type {((done?: unknown) => void)[]} */
  const answers = [];
  const look = latest(async () => {
    const text = typed;
    await new Promise((answered) => { answers.push(answered); });
    seen.push(text);
  });
  const done = ["1", "12", "123"].map((text) => {
    typed = text;
    return look();
  });
  assert.equal(answers.length, 1, "at once, and one at a time");
  answers[0]();
  await new Promise((go) => { setImmediate(go); });
  assert.equal(answers.length, 2, "what came meanwhile is asked as one");
  answers[1]();
  await Promise.all(done);
  assert.deepEqual(seen, ["1", "123"]);
  typed = "4";
  const last = look();
  answers[2]();
  await last;
  assert.deepEqual(seen, ["1", "123", "4"]);
});

test("a fault in one run does not stop the next", async () => {
  let runs = 0;
  const look = latest(async () => {
    runs += 1;
    if (runs === 1) throw new TypeError("a fault");
  });
  await assert.rejects(look, TypeError);
  await look();
  assert.equal(runs, 2);
});
