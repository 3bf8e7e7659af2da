// The page "Try and check": Python in the browser works what is typed; this shows what it says.

/** @typedef {{ says: string, why: string, aside: boolean }} Line */
/** @typedef {{ text: string, sign: string, word: string, fits: string[], remarks: string[] }} Marked */
/** @typedef {{ problem: string, answer: string, lines: Line[], answers: Marked[] }} Found */
/** @typedef {{ refused: string, remedy: string, column: number }} Refused */

/** Give what has an id.
 * @template {HTMLElement} T
 * @param {string} id
 * @param {new () => T} kind
 * @returns {T}
 */
function part(id, kind) {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`the page has no ${id}`);
  return found;
}

const problem = part("problem", HTMLInputElement);
const answers = part("answers", HTMLTextAreaElement);
const check = part("check", HTMLButtonElement);
const state = part("state", HTMLElement);
const refused = part("refused", HTMLElement);
const found = part("found", HTMLElement);

/** Make an element with words in it.
 * @param {string} tag
 * @param {string} [words]
 * @param {string} [kind]
 */
function made(tag, words = "", kind = "") {
  const one = document.createElement(tag);
  one.textContent = words;
  if (kind) one.className = kind;
  return one;
}

/** Make a formula of the text that Python wrote.
 * @param {string} written
 */
function formula(written) {
  return document.importNode(new DOMParser().parseFromString(written, "text/xml").documentElement, true);
}

/** @param {Line} line */
function workedRow(line) {
  const row = made("tr");
  const says = made("td");
  if (line.aside) says.append("( ", formula(line.says), " )");
  else says.append(formula(line.says));
  row.append(says, made("td", line.why));
  return row;
}

/** @param {Marked} one */
function markedRow(one) {
  const row = made("tr");
  const verdict = made("td");
  const sign = made("span", one.sign, "sign");
  sign.setAttribute("aria-hidden", "true");
  verdict.append(sign, ` ${one.word}`);
  const shows = made("td");
  if (one.fits.length) shows.append(made("p", `May be a child who ${one.fits.join(", or who ")}.`));
  else if (one.sign === "✗" && !one.remarks.length) shows.append(made("p", "No pattern that is known writes this."));
  for (const remark of one.remarks) shows.append(made("p", `${remark[0].toUpperCase()}${remark.slice(1)}.`));
  row.append(made("td", one.text), verdict, shows);
  return row;
}

/** @param {Found} told */
function show(told) {
  part("asked", HTMLElement).replaceChildren(formula(told.problem), " gives ", formula(told.answer));
  part("lines", HTMLElement).replaceChildren(...told.lines.map(workedRow));
  part("verdicts", HTMLElement).replaceChildren(...told.answers.map(markedRow));
  part("none", HTMLElement).hidden = told.answers.length > 0;
  const right = told.answers.filter((one) => one.sign === "✓").length;
  state.textContent = `Checked: ${right} of ${told.answers.length} right.`;
}

/** @param {Refused} told */
function refuse(told) {
  const where = told.column ? ` (sign ${told.column})` : "";
  refused.textContent = `${told.refused}${where}. ${told.remedy}`;
  state.textContent = "";
}

/** Get Python and the pure floors ready; everything comes from beside this page.
 * @returns {Promise<(problem: string, answers: string) => Found | Refused>}
 */
async function ready() {
  const beside = new URL("python/", document.baseURI).href;
  const { loadPyodide } = await import(`${beside}pyodide.mjs`);
  const python = await loadPyodide({ indexURL: beside });
  const packed = await fetch("onewhole.zip");
  if (!packed.ok) throw new Error(`onewhole.zip: ${packed.status}`);
  python.unpackArchive(await packed.arrayBuffer(), "zip", { extractDir: "unpacked" });
  const tried = python.runPython("import sys; sys.path.insert(0, 'unpacked'); from trying import tried; tried");
  return (typed, lines) => JSON.parse(tried(typed, lines));
}

const python = ready();

async function checked() {
  const tried = await python;
  const told = tried(problem.value, answers.value);
  refused.hidden = !("refused" in told);
  found.hidden = "refused" in told;
  problem.toggleAttribute("aria-invalid", "refused" in told);
  if ("refused" in told) refuse(told);
  else show(told);
}

part("form", HTMLFormElement).addEventListener("submit", (event) => {
  event.preventDefault();
  checked();
});
for (const one of document.querySelectorAll("button[data-problem]")) {
  if (!(one instanceof HTMLButtonElement)) continue;
  one.addEventListener("click", () => {
    problem.value = one.dataset.problem ?? "";
    answers.value = one.dataset.answers ?? "";
    checked();
  });
}
python.then(
  () => {
    check.disabled = false;
    state.textContent = "Ready.";
  },
  (fault) => {
    state.textContent = "This page cannot get ready: load it again, from a server and not from a disk.";
    console.error(fault);
  },
);
