// Cells on their way to the disk, against a disk that the test plays.

import assert from "node:assert/strict";
import test from "node:test";

import { Refused } from "../../src/onewhole/web/static/kit.js";
import { Saving } from "../../src/onewhole/web/static/marking_saving.js";

/** @typedef {import("../../src/onewhole/web/static/marking_cell.js").Cell} Cell */
/** @typedef {import("../../src/onewhole/web/static/marking_saving.js").Found} Found */
/** @typedef {[code: string, label: string, text: string, was: string][]} Sent */

const JUDGED = { verdict: "right", sign: "✓", mathml: null, said: "right." };

/** @param {string} label */
function cellOf(label) {
  const cell = { code: "K01", label, key: `K01 ${label}`, kept: "", text: "", stands: null, why: "", maybe: new Set(), state: "", isTyping: false, shown: "", show() { this.shown = this.text; } };
  return /** @type {Cell & { shown: string }} */ (/** @type {unknown} */ (cell));
}

/** @param {{ label: string, text: string }} one */
const seen = ({ label, text }) => ({ code: "K01", label, text, readAs: null, read: "", judged: JUDGED });

/**
 * A saving whose requests are answered by hand, one after another.
 * @param {boolean} [renews]
 */
function opened(renews = false) {
  const cells = ["1", "2"].map(cellOf);
  /** @type {{ sent: Sent, answer: (found: Partial<Found> | Refused) => Promise<void> }[]} */
  const requests = [];
  /** @type {string[]} */
  const heard = [];
  const send = (/** @type {FormData} */ form) => new Promise((good, bad) => {
    const answer = async (/** @type {Partial<Found> | Refused} */ found) => {
      if (found instanceof Refused) bad(found);
      else good({ kept: [], clashes: [], refused: [], ...found });
      await new Promise((go) => { setImmediate(go); });
    };
    requests.push({ sent: JSON.parse(String(form.get("cells"))), answer });
  });
  const saving = new Saving({ send: /** @type {any} */ (send), renew: async () => renews }, new Map(cells.map((cell) => [cell.key, cell])), {
    kept: (kept) => heard.push(`kept ${kept.map((cell) => cell.label)}`),
    clash: (cell) => heard.push(`clash ${cell.label}`),
    failing: (words, count) => heard.push(words ? `failing ${count}` : "again"),
  });
  const write = (/** @type {number} */ at, /** @type {string} */ text) => {
    cells[at].text = text;
    saving.put([cells[at]]);
  };
  return { saving, cells, requests, heard, write };
}

test("a cell is kept when the disk has it, and not before", async () => {
  const { saving, cells, requests, heard, write } = opened();
  write(0, "3 1/2");
  assert.equal(cells[0].state, "waiting");
  assert.deepEqual(requests[0].sent, [["K01", "1", "3 1/2", ""]]);
  await requests[0].answer({ kept: [seen({ label: "1", text: "3 1/2" })] });
  assert.deepEqual([cells[0].state, cells[0].kept, cells[0].shown], ["kept", "3 1/2", "3 1/2"]);
  assert.deepEqual(heard, ["kept 1"]);
  assert.ok(saving.idle);
});

test("one request at a time; the next one has the latest text and what was kept before it", async () => {
  const { cells, requests, write } = opened();
  write(0, "3");
  write(0, "3 1");
  write(0, "3 1/2");
  write(1, "4");
  assert.equal(requests.length, 1);
  await requests[0].answer({ kept: [seen({ label: "1", text: "3" })] });
  assert.equal(cells[0].state, "waiting");
  assert.deepEqual(requests[1].sent, [["K01", "1", "3 1/2", "3"], ["K01", "2", "4", ""]]);
});

test("without an answer the cells wait and are sent again", async () => {
  const { saving, cells, requests, heard, write } = opened();
  write(0, "3");
  await requests[0].answer(new Refused(0, { refused: "No answer" }));
  assert.deepEqual([cells[0].state, saving.failing, heard.at(-1)], ["failed", true, "failing 1"]);
  write(1, "4");
  assert.deepEqual([cells[1].state, requests.length, heard.at(-1)], ["failed", 1, "failing 2"]);
  saving.now();
  await requests[1].answer({ kept: [seen({ label: "1", text: "3" }), seen({ label: "2", text: "4" })] });
  assert.deepEqual(heard.slice(-2), ["again", "kept 1,2"]);
  assert.ok(saving.idle && !saving.failing);
});

test("what another window wrote is a clash; our own writing whose answer was lost is not", async () => {
  const { saving, cells, requests, heard, write } = opened();
  write(0, "3");
  await requests[0].answer(new Refused(0, { refused: "No answer" }));
  write(0, "5");
  saving.now();
  await requests[1].answer({ clashes: [seen({ label: "1", text: "3" })] });
  assert.deepEqual(requests[2].sent, [["K01", "1", "5", "3"]], "the lost writing stands there: it is written over");
  await requests[2].answer({ clashes: [seen({ label: "1", text: "9" })] });
  assert.deepEqual([cells[0].state, cells[0].stands, heard.at(-2)], ["clash", "9", "clash 1"]);
});

test("a refused text says why, unless something newer stands there", async () => {
  const { cells, requests, write } = opened();
  write(0, "x".repeat(9));
  await requests[0].answer({ refused: [{ at: 0, why: "It is too long." }] });
  assert.deepEqual([cells[0].state, cells[0].why], ["refused", "Not kept. It is too long."]);
});

test("after the program was started again the cells go with the new session's CSRF token at once", async () => {
  const { saving, requests, heard, write } = opened(true);
  write(0, "3");
  await requests[0].answer(new Refused(403, { refused: "Another session" }));
  await new Promise((go) => { setTimeout(go, 5); });
  assert.equal(requests.length, 2);
  assert.deepEqual(heard, []);
  assert.ok(!saving.idle);
});

test("to rest is to wait until all is kept or has failed", async () => {
  const { saving, requests, write } = opened();
  await saving.rest();
  write(0, "3");
  let isRested = false;
  saving.rest().then(() => { isRested = true; });
  await new Promise((go) => { setImmediate(go); });
  assert.ok(!isRested);
  await requests[0].answer(new Refused(500, { refused: "The disk is full" }));
  assert.ok(isRested);
  saving.now();
  await requests[1].answer({ kept: [seen({ label: "1", text: "3" })] });
});
