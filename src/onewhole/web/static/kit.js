// What every page of ours needs: find a place, send a form with the session's CSRF token, say something, write on a page.

/**
 * What the server tells of something it refused. `stands` is what another window kept meanwhile; `row` is its markup.
 * @typedef {{ refused: string, remedy?: string, where?: string, stands?: string, row?: string }} Told
 */
/** Fields of a form. @typedef {Record<string, string> | FormData} Fields */

/**
 * The element with an id. A page that lacks it, or has another kind there, is a fault of ours and raises.
 * @template {Element} [T=HTMLElement]
 * @param {string} id
 * @param {new () => T} [kind] such as HTMLInputElement
 * @returns {T}
 */
export function get(id, kind) {
  return checked(document.getElementById(id), kind, `#${id}`);
}

/**
 * The first element under `within` that a selector finds; as `get` where there is none.
 * @template {Element} [T=HTMLElement]
 * @param {ParentNode} within
 * @param {string} selector
 * @param {new () => T} [kind]
 * @returns {T}
 */
export function find(within, selector, kind) {
  return checked(within.querySelector(selector), kind, selector);
}

/**
 * @template {Element} T
 * @param {Element | null} found
 * @param {(new () => T) | undefined} kind
 * @param {string} sought
 * @returns {T}
 */
function checked(found, kind, sought) {
  if (!(found instanceof (kind ?? HTMLElement))) throw new Error(`This page has no ${sought}`);
  return /** @type {T} */ (found);
}

/**
 * Every element under `within` that a selector finds.
 * @param {ParentNode} within
 * @param {string} selector
 * @returns {HTMLElement[]}
 */
export const all = (within, selector) => /** @type {HTMLElement[]} */ ([...within.querySelectorAll(selector)]);

/**
 * The element around what an event happened to.
 * @param {Event} event
 * @param {string} selector
 * @returns {HTMLElement | null}
 */
export const around = (event, selector) => (event.target instanceof Element ? event.target.closest(selector) : null);

/** The meta element that holds the session's CSRF token. A page may take a new one when the program was started again. */
const tokenMeta = () => /** @type {HTMLMetaElement | null} */ (document.querySelector('meta[name="csrf_token"]'));
export const csrfToken = () => tokenMeta()?.content ?? "";

/** What the server refused, with what to do next; `status` 0 when no answer came. */
export class Refused extends Error {
  /**
   * @param {number} status
   * @param {Told} told
   */
  constructor(status, told) {
    super([told.refused, told.remedy].flatMap((said) => (said ? [said.replace(/[^.?!]$/, "$&.")] : [])).join(" "));
    this.status = status;
    this.told = told;
  }
}

/**
 * Return what was caught where it is a refusal; anything else is a fault and goes on.
 * @param {unknown} error
 * @returns {Refused}
 */
export function refusal(error) {
  if (error instanceof Refused) return error;
  throw error;
}

/**
 * Return what comes of an answer; where none comes, or it breaks off in the middle, that is refused with status 0.
 * @template T
 * @param {Promise<T>} coming
 * @returns {Promise<T>}
 */
async function whole(coming) {
  try {
    return await coming;
  } catch {
    throw new Refused(0, { refused: "The program does not answer.", remedy: "See that it still runs; what shows as kept is kept." });
  }
}

/**
 * Send to an address of ours and return its answer. `fields` make it a POST. Raises Refused.
 * @param {string} address
 * @param {Fields | null} [fields]
 * @param {{ keepalive?: boolean }} [how]
 * @returns {Promise<Response>}
 */
export async function send(address, fields = null, how = {}) {
  /** @type {Record<string, string>} */
  const headers = { Accept: "application/json" };
  let body;
  if (fields) {
    headers["X-CSRF-Token"] = csrfToken();
    body = fields instanceof FormData ? fields : new URLSearchParams(fields);
  }
  const answer = await whole(fetch(address, { ...how, method: fields ? "POST" : "GET", headers, body, credentials: "same-origin" }));
  if (answer.ok) return answer;
  const isJson = answer.headers.get("content-type")?.includes("json");
  throw new Refused(answer.status, isJson ? await whole(answer.json()) : { refused: await whole(answer.text()) });
}

/**
 * Ask an address of ours and return its JSON; as `send`.
 * @param {string} address
 * @param {Fields | null} [fields]
 * @param {{ keepalive?: boolean }} [how]
 * @returns {Promise<any>}
 */
export async function ask(address, fields = null, how = {}) {
  return whole((await send(address, fields, how)).json());
}

/**
 * Load a page of ours behind the scenes, and take its CSRF token.
 * @param {string} address
 * @returns {Promise<{ page: Document, isNewToken: boolean } | null>} null where there is no such page now
 */
export async function loaded(address) {
  const answer = await fetch(address, { credentials: "same-origin" });
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const fresh = /** @type {HTMLMetaElement | null} */ (page.querySelector('meta[name="csrf_token"]'))?.content;
  const old = tokenMeta();
  if (!answer.ok || !fresh || !old) return null;
  const isNewToken = fresh !== old.content;
  old.content = fresh;
  return { page, isNewToken };
}

const SHOWN_FOR = 7000; // milliseconds for which something said is in sight
/** @type {ReturnType<typeof setTimeout> | undefined} */
let leaving;

/**
 * Say something to everybody: it is shown for a while and read aloud by a screen reader.
 * @param {string} words
 */
export function say(words) {
  const place = get("said");
  place.textContent = "";
  place.classList.remove("left");
  clearTimeout(leaving);
  requestAnimationFrame(() => { place.textContent = words; });
  leaving = setTimeout(() => { place.classList.add("left"); }, SHOWN_FOR);
}

/**
 * Make an element: `make("td", { class: "wrong" }, "text", child)`. Text is always text, never markup.
 * @template {keyof HTMLElementTagNameMap} K
 * @param {K} name
 * @param {Record<string, string | number | boolean | null | undefined>} [attributes]
 * @param {(Node | string)[]} children
 * @returns {HTMLElementTagNameMap[K]}
 */
export function make(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === true) made.setAttribute(key, "");
    else if (value !== false && value !== null && value !== undefined) made.setAttribute(key, String(value));
  }
  made.append(...children);
  return made;
}

/**
 * Markup that the server made, as nodes. What somebody typed never comes here by another way.
 * @param {string} markup
 * @returns {DocumentFragment}
 */
export const fragment = (markup) => document.createRange().createContextualFragment(markup);

/**
 * Run `run` when nothing happened for `wait` milliseconds.
 * @template {unknown[]} A
 * @param {(...given: A) => unknown} run
 * @param {number} wait
 * @returns {(...given: A) => void}
 */
export function calmly(run, wait) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  return (...given) => {
    clearTimeout(timer);
    timer = setTimeout(() => run(...given), wait);
  };
}

/**
 * Run `run` at once, and never twice at a time: what comes while it runs makes it run once more afterwards.
 * @param {() => Promise<unknown>} run
 * @returns {() => Promise<void>}
 */
export function latest(run) {
  let isRunning = false;
  let again = false;
  return async () => {
    again = true;
    if (isRunning) return;
    isRunning = true;
    try {
      while (again) {
        again = false;
        await run();
      }
    } finally {
      isRunning = false;
    }
  };
}
