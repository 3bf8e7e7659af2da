// Parts of a page on demand: an address opens the part that it points into, and paper shows all of them.

import { all } from "./kit.js";

/** Those that hold controls and nothing to read stay closed on paper. */
const CONTROLS = "details:has(form), details.how-to";

/**
 * Open what an address points at and all around it, and go there. @param {string} hash
 * @returns {boolean} whether it points at something on this page
 */
export function openTo(hash) {
  const target = hash.length > 1 ? document.getElementById(decodeURIComponent(hash.slice(1))) : null;
  if (!target) return false;
  for (let at = target.closest("details"); at; at = at.parentElement?.closest("details") ?? null) at.open = true;
  if (target instanceof HTMLDetailsElement) target.querySelector("summary")?.focus({ preventScroll: true });
  target.scrollIntoView({ block: "start" });
  return true;
}

/** @type {HTMLDetailsElement[]} */
let opened = [];
addEventListener("beforeprint", () => {
  const closed = /** @type {HTMLDetailsElement[]} */ (all(document, "main details:not([open])"));
  opened = closed.filter((one) => !one.matches(CONTROLS) || one.matches(".part, .talk"));
  for (const one of opened) one.open = true;
});
addEventListener("afterprint", () => {
  for (const one of opened) one.open = false;
});
addEventListener("hashchange", () => openTo(location.hash));
document.addEventListener("click", (event) => {
  const link = event.target instanceof Element ? event.target.closest('a[href^="#"]') : null;
  if (link instanceof HTMLAnchorElement && link.hash === location.hash) openTo(link.hash); // no change to be heard
});
openTo(location.hash);
