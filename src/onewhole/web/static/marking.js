// The Marking page: typing never waits for the server; verdicts, saving and other windows come along beside it.

import { Refused, ask, make, say } from "./kit.js";
import { Cell, put } from "./marking_cell.js";
import { Saving } from "./marking_saving.js";

const table = document.getElementById("grid");
if (table) start();

function start() {
  const address = table.dataset.at;
  const rows = [...table.tBodies[0].rows].map((tr, row) => [...tr.querySelectorAll("td")].map((td, column) => new Cell(td, row, column)));
  const cells = new Map(rows.flat().map((cell) => [cell.key, cell]));
  const heads = [...table.tHead.rows[0].cells].slice(1);
  const clashes = document.getElementById("clashes");
  const unkept = document.getElementById("unkept");
  const sheet = table.closest(".sheet");
  const narrow = window.matchMedia("(max-width: 48rem)");
  const bar = document.getElementById("verdict");
  const undo = [];
  const known = new Map();
  let here = rows[0][0];
  let stamp = table.dataset.stamp;
  let wanted = null;
  let judging = false;
  let resting = 0;
  let quiet = 0;

  /** Say something to everybody, and take it off the screen when it was read. */
  function announce(words) {
    say(words);
    clearTimeout(quiet);
    quiet = setTimeout(() => say(""), 12000);
  }

  const saving = new Saving(address, cells, {
    kept: (kept, refused) => {
      if (kept.includes(here)) tell();
      if (refused.length) announce(refused[0].why);
    },
    clash: (cell) => {
      showClashes();
      announce(`${cell.name} was changed in another window too. Choose above the grid.`);
    },
    failing: (words, count) => {
      unkept.hidden = !words;
      const told = `${count === 1 ? "1 cell is" : `${count} cells are`} not kept yet. ${words} It is tried again by itself; leave this page open.`;
      if (unkept.firstElementChild.textContent !== told) unkept.firstElementChild.textContent = words ? told : "";
      if (!words) announce("Kept again.");
    },
  });

  // ---- what is said of the cell one is in

  function tell() {
    const judged = here.judged;
    const text = here.input.value;
    const fresh = here.judgedText === text;
    here.mark();
    bar.querySelector(".whose").textContent = `${here.name}, ${heads[here.column].dataset.typed}:`;
    put(bar.querySelector(".formula"), fresh ? judged.mathml : null, text);
    bar.querySelector(".sign").textContent = fresh && text ? judged.sign : "";
    const by = here.foretold && here.editing ? ` As ${here.foretold} would write it; * for the next.` : "";
    const read = fresh && here.readAs ? ` Read as ${here.readAs}.` : "";
    const words = fresh && text ? judged.said : "";
    bar.querySelector(".words").textContent = `${words}${read}${by} ${here.why}`.trim();
    clearTimeout(resting);
    resting = setTimeout(() => {
      if (here.editing && words) document.getElementById("heard").textContent = words;
      more();
    }, 500);
  }

  function judge(cell) {
    wanted = cell;
    if (!judging) judgeAll();
  }

  async function judgeAll() {
    judging = true;
    while (wanted) {
      const cell = wanted;
      const text = cell.input.value;
      const key = `${cell.label}\n${text}`;
      wanted = null;
      try {
        if (!known.has(key)) {
          if (known.size > 3000) known.clear();
          known.set(key, await ask(`${address}/judge`, { label: cell.label, text }));
        }
      } catch (refused) {
        if (!(refused instanceof Refused)) throw refused;
        continue; // the text stays; saving tells that there is no answer
      }
      if (cell.input.value === text) {
        cell.show(known.get(key), text);
        if (cell === here) tell();
      }
    }
    judging = false;
  }

  // ---- moving and keeping

  function go(row, column) {
    const cell = rows[Math.max(0, Math.min(row, rows.length - 1))]?.[Math.max(0, Math.min(column, heads.length - 1))];
    if (cell === here) here.input.select();
    enter(cell);
    cell.input.focus();
  }

  function enter(cell) {
    if (cell === here) return;
    commit(here);
    here.input.tabIndex = -1;
    table.tBodies[0].rows[here.row].classList.remove("now");
    here = cell;
    here.input.tabIndex = 0;
    table.tBodies[0].rows[here.row].classList.add("now");
  }

  /** The head of the grid stays in sight with the cell one is in. */
  function inSight() {
    if (narrow.matches) return;
    const low = here.td.getBoundingClientRect().bottom > window.innerHeight - bar.offsetHeight;
    if (low || sheet.getBoundingClientRect().top < 0) sheet.scrollIntoView({ block: "start" });
  }

  function next() {
    const down = document.querySelector("input[name=enter]:checked").value === "down";
    const last = down ? here.row === rows.length - 1 : here.column === heads.length - 1;
    if (here.row === rows.length - 1 && here.column === heads.length - 1) {
      commit(here);
      here.input.select();
      announce("That was the last cell.");
    } else if (down) go(last ? 0 : here.row + 1, here.column + (last ? 1 : 0));
    else go(here.row + (last ? 1 : 0), last ? 0 : here.column + 1);
  }

  /** What is typed in a cell is the teacher's word now: it goes to the disk. */
  function commit(cell) {
    cell.foretold = null;
    if (cell.editing && cell.input.value !== cell.text) change([[cell, cell.input.value]]);
    cell.editing = false;
    cell.mark();
  }

  /** Write cells and send them; the writing can be taken back as one. */
  function change(writes, undoing = false) {
    const changed = writes.filter(([cell, text]) => cell.text !== text);
    if (!undoing && changed.length) undo.push(changed.map(([cell, text]) => [cell, cell.text, text]));
    for (const [cell, text] of changed) cell.write(text);
    const free = changed.map(([cell]) => cell).filter((cell) => cell.stands === null);
    saving.put(free);
    if (changed.some(([cell]) => cell.stands !== null)) showClashes();
  }

  function takeBack() {
    const group = undo.pop();
    if (!group) return announce("There is nothing to take back.");
    const writes = group.filter(([cell, , after]) => cell.text === after).map(([cell, before]) => [cell, before]);
    change(writes, true);
    writes.forEach(([cell]) => judge(cell));
    tell();
    return announce(writes.length === 1 ? `${writes[0][0].name} is as it was.` : `${writes.length} cells are as they were.`);
  }

  function type(cell, text, foretold = null) {
    cell.input.value = text;
    cell.editing = true;
    cell.foretold = foretold;
    judge(cell);
    tell();
  }

  async function predictions(cell) {
    const row = rows[cell.row].map((one) => [one.label, one.readAs ?? one.text]);
    return (await ask(`${address}/foretell`, { label: cell.label, row: JSON.stringify(row) })).predicted;
  }

  async function foretell(cell) {
    const before = cell.input.value;
    if (!cell.predictions || !cell.foretold) {
      cell.at = -1;
      try {
        cell.predictions = await predictions(cell);
      } catch (refused) {
        return announce(refused.message);
      }
    }
    if (cell !== here || cell.input.value !== before) return undefined;
    if (!cell.predictions.length) return announce("No pattern would write something else here.");
    cell.at = (cell.at + 1) % cell.predictions.length;
    const [id, name, text] = cell.predictions[cell.at];
    return type(cell, text, `“${name}” (${id})`);
  }

  const PLAIN = {
    Enter: next,
    ArrowUp: () => go(here.row - 1, here.column),
    ArrowDown: () => go(here.row + 1, here.column),
    "*": () => foretell(here),
    "+": () => type(here, heads[here.column].dataset.right),
    "?": () => { const keys = document.getElementById("keys"); keys.open = !keys.open; },
    Escape: () => { here.input.value = here.text; here.editing = false; here.foretold = null; judge(here); here.input.select(); tell(); },
    Home: () => go(here.row, 0),
    End: () => go(here.row, heads.length - 1),
    ArrowLeft: () => go(here.row, here.column - 1),
    ArrowRight: () => go(here.row, here.column + 1),
  };
  const ONLY_AT_REST = new Set(["*", "+", "?", "Home", "End"]);

  function keyed(event) {
    const { key, ctrlKey, metaKey, altKey, shiftKey } = event;
    const { input, editing, foretold } = here;
    if (altKey || event.isComposing) return null;
    if (ctrlKey || metaKey) {
      if (key === "Home") return () => go(0, 0);
      if (key === "End") return () => go(rows.length - 1, heads.length - 1);
      return key === "z" && !editing ? takeBack : null;
    }
    if (key === "Enter" && shiftKey) return toColumn;
    if (shiftKey && key.length > 1) return null;
    if (ONLY_AT_REST.has(key) && editing && !(foretold && key.length === 1)) return null;
    const at = input.selectionStart;
    if (key === "ArrowLeft" && editing && !(at === 0 && input.selectionEnd === 0)) return null;
    if (key === "ArrowRight" && editing && at !== input.value.length) return null;
    return PLAIN[key] ?? null;
  }

  const cellOf = (target) => (target.matches?.("td input") ? cells.get(`${target.closest("td").dataset.code} ${target.closest("td").dataset.label}`) : null);

  table.addEventListener("keydown", (event) => {
    const run = cellOf(event.target) ? keyed(event) : null;
    if (!run) return;
    event.preventDefault();
    run();
  });
  table.addEventListener("focusin", (event) => {
    const cell = cellOf(event.target);
    if (!cell) return;
    enter(cell);
    cell.input.select();
    requestAnimationFrame(inSight);
    tell();
  });
  table.addEventListener("focusout", (event) => { if (cellOf(event.target) === here) commit(here); });
  let pause = 0;
  table.addEventListener("input", (event) => {
    const cell = cellOf(event.target);
    cell.editing = true;
    cell.foretold = null;
    judge(cell);
    tell();
    clearTimeout(pause);
    pause = setTimeout(() => { if (cell.editing && !cell.foretold && cell.input.value !== cell.text) { change([[cell, cell.input.value]]); cell.editing = true; } }, 2000);
  });
  table.addEventListener("click", (event) => { event.target.closest("td")?.querySelector("input").focus(); });

  // ---- a block from a spreadsheet

  table.addEventListener("paste", async (event) => {
    const cell = cellOf(event.target);
    const text = event.clipboardData.getData("text/plain");
    if (!cell || !(/[\t\n\r]/.test(text) || (!cell.editing && /[,;]/.test(text)))) return;
    event.preventDefault();
    const form = new FormData();
    for (const [name, value] of Object.entries({ text, code: cell.code, label: cell.label })) form.set(name, value);
    try {
      const laid = await ask(`${address}/paste`, form);
      const writes = laid.cells.map(([code, label, written]) => [cells.get(`${code} ${label}`), written]);
      change(writes.filter(([one]) => !(one === here && one.editing)));
      if (!here.editing) { here.input.select(); tell(); }
      announce([`${writes.length} ${writes.length === 1 ? "answer" : "answers"} pasted.`, ...laid.told].join(" "));
    } catch (refused) {
      announce(refused.message);
    }
  });

  // ---- everyone right in a problem, except some

  const form = document.getElementById("column");

  function toColumn() {
    commit(here);
    form.elements.label.value = here.label;
    form.elements.wrong.focus();
    form.elements.wrong.select();
  }

  form.addEventListener("keydown", (event) => { if (event.key === "Escape") here.input.focus(); });
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    const label = form.elements.label.value;
    await saving.rest();
    if (!saving.idle) return announce("Not filled in: some cells are not kept yet.");
    try {
      const found = await ask(`${address}/column`, { label, wrong: form.elements.wrong.value });
      const writes = found.kept.map((seen) => [cells.get(`${seen.code} ${seen.label}`), seen]);
      undo.push(writes.map(([cell, seen]) => [cell, cell.text, seen.text]));
      for (const [cell, seen] of writes) {
        cell.kept = seen.text;
        cell.write(seen.text);
        cell.show(seen.judged, seen.text, seen.readAs);
        cell.state = "kept";
      }
      form.elements.wrong.value = "";
      announce(`${writes.length} filled in, ${found.left.length} left to type.`);
      (cells.get(`${found.left[0]} ${label}`) ?? rows[0][heads.findIndex((head) => head.dataset.label === label)]).input.focus();
    } catch (refused) {
      announce(refused.message);
    }
    return undefined;
  });

  // ---- other windows

  function showClashes() {
    const differ = [...cells.values()].filter((cell) => cell.stands !== null);
    clashes.hidden = !differ.length;
    clashes.querySelector("ul").replaceChildren(...differ.map((cell) => {
      const mine = make("button", { type: "button", class: "small" }, `Keep “${cell.text}”`);
      const other = make("button", { type: "button", class: "small" }, `Take “${cell.stands}”`);
      mine.addEventListener("click", () => settle(cell, cell.text));
      other.addEventListener("click", () => settle(cell, cell.stands));
      return make("li", {}, `${cell.name}: here “${cell.text}”, in the other window “${cell.stands}”. `, mine, " ", other);
    }));
  }

  function settle(cell, text) {
    cell.kept = cell.stands;
    cell.stands = null;
    cell.write(text);
    judge(cell);
    if (text === cell.kept) cell.state = "kept";
    else saving.put([cell]);
    showClashes();
    cell.input.focus();
  }

  async function look() {
    const { turn } = saving;
    if (document.hidden || !saving.idle) return;
    let found;
    try {
      found = await ask(`${address}/now?since=${encodeURIComponent(stamp)}`);
    } catch {
      return; // saving tells that there is no answer, as soon as there is something to lose
    }
    if (turn !== saving.turn || !saving.idle) return;
    stamp = found.stamp;
    for (const seen of found.cells ?? []) {
      const cell = cells.get(`${seen.code} ${seen.label}`);
      if (!cell || (seen.text === cell.kept && seen.readAs === cell.readAs)) continue;
      if (cell.stands !== null) {
        cell.stands = seen.text;
        showClashes();
      } else if (cell.text === cell.kept && !cell.editing) {
        cell.kept = seen.text;
        cell.write(seen.text);
        cell.show(seen.judged, seen.text, seen.readAs);
        cell.state = "kept";
        if (cell === here) tell();
      }
    }
  }
  setInterval(look, 3000);
  document.addEventListener("visibilitychange", () => { if (document.hidden) commit(here); else look(); });
  unkept.querySelector("button").addEventListener("click", () => saving.now());
  window.addEventListener("beforeunload", (event) => {
    commit(here);
    const open = [...cells.values()].some((cell) => ["clash", "refused"].includes(cell.state));
    if (open || saving.failing || saving.waiting.size) event.preventDefault();
  });
  document.addEventListener("click", async (event) => {
    const link = event.target.closest("a[href]");
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    commit(here);
    if (saving.idle || saving.failing) return;
    event.preventDefault(); // the next page shall know what was typed here last
    await saving.rest();
    location.assign(link.href);
  });

  // ---- more on the cell one is in

  const details = document.getElementById("more");
  details.addEventListener("toggle", more);

  async function more() {
    if (!details.open) return;
    const cell = here;
    try {
      const place = [cell.code, cell.label].map(encodeURIComponent).join("/");
      const [told, past] = await Promise.all([predictions(cell), ask(`${address}/written/${place}`)]);
      if (cell !== here) return;
      document.getElementById("predicted").replaceChildren(...told.map(([id, name, text]) => {
        const take = make("button", { type: "button", class: "small" }, text);
        take.addEventListener("click", () => { cell.input.focus(); type(cell, text, `“${name}” (${id})`); });
        return make("li", {}, take, ` ${name} (${id})`);
      }));
      const written = past.writings.map(({ text, when, by }) => make("li", {}, text ? `“${text}”` : "cleared", `, ${when}, ${by}`));
      document.getElementById("history").replaceChildren(...(written.length ? written : [make("li", {}, "Nothing yet.")]));
    } catch (refused) {
      announce(refused.message);
    }
  }

  document.getElementById("read-as").addEventListener("submit", async (event) => {
    event.preventDefault();
    const cell = here;
    const { read } = event.target.elements;
    await saving.rest();
    try {
      const judged = await ask(`${address}/read-as`, { code: cell.code, label: cell.label, typed: cell.text, read: read.value });
      cell.show(judged, cell.text, read.value === cell.text ? null : read.value);
      read.value = "";
      cell.input.focus();
      tell();
    } catch (refused) {
      announce(refused.message);
    }
  });

  tell();
}
