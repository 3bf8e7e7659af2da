// A part of the walkthrough on the page: its script, what is recorded of it, and its place on the board.

import { all, find, fragment, get } from "./kit.js";

/** @typedef {{ role: string, says: string }} Step */

const board = get("board", HTMLIFrameElement);

/**
 * An element of the board in the frame.
 * @param {string} id
 * @returns {HTMLElement | null}
 */
export const onBoard = (id) => board.contentDocument?.getElementById(id) ?? null;

export class Part {
  /** @param {HTMLElement} item */
  constructor(item) {
    this.item = item;
    this.label = item.dataset.part ?? "";
    this.name = find(item, "h3").textContent?.trim() ?? "";
    /** @type {Step[]} */
    this.steps = all(item, ".steps-said li").map((step) => ({
      role: find(step, ".role").textContent ?? "",
      says: find(step, ".says").textContent ?? "",
    }));
  }

  /** Show its first step on the board; what has the focus keeps it. The microphone would hear what plays. */
  show() {
    for (const heard of document.querySelectorAll("audio, video")) /** @type {HTMLMediaElement} */ (heard).pause();
    const aloud = /** @type {HTMLInputElement | null} */ (onBoard("aloud"));
    if (aloud?.checked) aloud.click();
    const focused = /** @type {HTMLElement | null} */ (document.activeElement);
    const links = board.contentDocument?.querySelectorAll("#problems a") ?? [];
    /** @type {HTMLElement | undefined} */ (links[Number(this.item.dataset.at)])?.click();
    focused?.focus({ preventScroll: true });
  }

  /** @param {boolean} isHere */
  mark(isHere) {
    if (isHere) this.item.setAttribute("aria-current", "true");
    else this.item.removeAttribute("aria-current");
  }

  /** Which recording is kept of it, as this window knows; nothing for none. */
  get saw() { return find(this.item, "[data-recorded]").dataset.saw ?? ""; }

  set saw(which) { find(this.item, "[data-recorded]").dataset.saw = which; }

  /** Show what is recorded of it now. @param {string} markup the server's */
  put(markup) {
    this.item.querySelector("audio")?.remove();
    find(this.item, "[data-recorded]").replaceWith(fragment(markup));
    this.offer();
  }

  /** Offer to record it. */
  offer() {
    find(this.item, "[data-record]").hidden = false;
  }

  focus() {
    const within = this.item.closest("details");
    if (within) within.open = true;
    find(this.item, "[data-record]").focus();
  }
}
