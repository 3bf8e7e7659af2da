// What every page of ours needs: send a form with the session's seal, say something, write on a page.

/** The session's seal, read when it is sent: a page may take a new one when the program was started again. */
const seal = () => document.querySelector('meta[name="seal"]')?.content ?? "";

/** What the server refused, with what to do next; `status` 0 when no answer came. */
export class Refused extends Error {
  constructor(status, told) {
    super([told.refused, told.remedy].filter(Boolean).map((said) => said.replace(/[^.?!]$/, "$&.")).join(" "));
    this.status = status;
    this.told = told;
  }
}

/** Ask an address of ours and return its JSON. `fields` (an object, FormData or null) makes it a POST. */
export async function ask(address, fields = null, { signal, keepalive = false } = {}) {
  const headers = { Accept: "application/json" };
  let body;
  if (fields) {
    headers["X-Seal"] = seal();
    body = fields instanceof FormData ? fields : new URLSearchParams(fields);
  }
  let answer;
  try {
    answer = await fetch(address, { method: fields ? "POST" : "GET", headers, body, signal, keepalive, credentials: "same-origin" });
  } catch (error) {
    if (error.name === "AbortError") throw error;
    throw new Refused(0, { refused: "The program does not answer.", remedy: "See that it still runs; what shows as kept is kept." });
  }
  const kind = answer.headers.get("content-type") ?? "";
  const told = kind.includes("json") ? await answer.json() : { refused: await answer.text(), remedy: "" };
  if (!answer.ok) throw new Refused(answer.status, told);
  return told;
}

/** Say something to everybody: it is shown at the foot and read aloud by a screen reader. */
export function say(words) {
  const place = document.getElementById("said");
  place.textContent = "";
  requestAnimationFrame(() => { place.textContent = words; });
}

/** Make an element: `make("td", { class: "wrong" }, "text", child)`. Text is always text, never markup. */
export function make(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === true) made.setAttribute(key, "");
    else if (value !== false && value !== null && value !== undefined) made.setAttribute(key, value);
  }
  made.append(...children);
  return made;
}

/** Run `run` when nothing happened for `wait` milliseconds. */
export function calmly(run, wait) {
  let timer = 0;
  return (...given) => {
    clearTimeout(timer);
    timer = setTimeout(() => run(...given), wait);
  };
}
