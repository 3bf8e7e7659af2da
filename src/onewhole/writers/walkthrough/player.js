"use strict";
{
  /** The element with an id; the page is written with all of them. @param {string} id */
  const get = (id) => /** @type {HTMLElement} */ (document.getElementById(id));
  /** @param {ParentNode} within @param {string} selector */
  const all = (within, selector) => /** @type {HTMLElement[]} */ ([...within.querySelectorAll(selector)]);
  const aloud = /** @type {HTMLInputElement} */ (get("aloud"));

  /** What a step does on the board, and whether it is the step that shows. @typedef {{ element: HTMLElement, fresh: boolean }} Act */

  const parts = all(document, ".part");
  const steps = parts.flatMap((part, partAt) => {
    const found = all(part, ".step");
    return found.map((element, at) => ({ element, partAt, at, of: found.length }));
  });
  const links = all(document, "#problems a");
  const voice = "speechSynthesis" in window ? window.speechSynthesis : null;

  let now = 0;
  let playing = false;
  let turn = 0; // whatever was planned under an older turn no longer counts
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;

  // ---- the board -----------------------------------------------------------------------------------------

  /** The acts that made the board of a step: all since it was last wiped clean. @param {number} last */
  function actsUpTo(last) {
    /** @type {Act[]} */
    const acts = [];
    steps.slice(0, last + 1).forEach((step, at) => {
      for (const element of all(step.element, ":scope > *")) {
        if (element.classList.contains("fresh")) acts.length = 0;
        else acts.push({ element, fresh: at === last });
      }
    });
    return acts;
  }

  /** @param {Act} act */
  function written(act) {
    const line = document.createElement("li");
    line.className = act.element.className;
    line.dataset.name = act.element.dataset.name ?? "";
    line.classList.toggle("new", act.fresh);
    line.append(...act.element.cloneNode(true).childNodes);
    return line;
  }

  /** @param {string | undefined} name */
  function struck(name) {
    const line = all(get("lines"), ":scope > li").find((each) => each.dataset.name === name);
    if (!line || line.classList.contains("struck")) return;
    line.classList.add("struck");
    const said = document.createElement("span");
    said.className = "unseen";
    said.textContent = " (struck out)";
    line.append(said);
  }

  /** Long lines are written smaller, and then folded between their parts, until they fit on the board. */
  function fit() {
    for (const line of get("lines").children) {
      for (const size of ["small", "folded"]) {
        if (line.scrollWidth > line.clientWidth) line.classList.add(size);
      }
    }
  }

  function drawBoard() {
    const lines = get("lines");
    const picture = get("picture");
    lines.replaceChildren();
    picture.replaceChildren();
    for (const act of actsUpTo(now)) {
      const kinds = act.element.classList;
      if (kinds.contains("write")) lines.append(written(act));
      else if (kinds.contains("strike")) struck(act.element.dataset.of);
      else if (kinds.contains("picture")) {
        const figure = /** @type {HTMLElement} */ (act.element.cloneNode(true));
        figure.classList.toggle("new", act.fresh);
        picture.replaceChildren(figure);
      }
    }
    lines.hidden = lines.children.length === 0;
    picture.hidden = picture.children.length === 0;
    get("board").classList.toggle("pictured", !picture.hidden);
    fit();
  }

  /** @param {number} at */
  function show(at) {
    now = Math.max(0, Math.min(at, steps.length - 1));
    const step = steps[now];
    drawBoard();
    get("part-name").textContent = parts[step.partAt].querySelector("h3")?.textContent ?? "";
    get("place").textContent = stepOf(step);
    get("caption").replaceChildren(...all(step.element, ".says").slice(0, 1).map((said) => said.cloneNode(true)));
    get("caption").classList.toggle("try", "try" in step.element.dataset);
    links.forEach((link, linkAt) => {
      if (linkAt === step.partAt) link.setAttribute("aria-current", "step");
      else link.removeAttribute("aria-current");
    });
    const newest = [...document.querySelectorAll("#lines .new")].pop() ?? document.querySelector("#picture .new");
    if (now > 0 && newest) newest.scrollIntoView({ block: "nearest" });
    nameButton();
  }

  /** @param {{ at: number, of: number }} step */
  function stepOf(step) {
    const words = get("where").dataset.stepOf ?? "";
    return words.replace("{at}", String(step.at + 1)).replace("{of}", String(step.of));
  }

  function nameButton() {
    const ended = now === steps.length - 1;
    const trying = "try" in steps[now].element.dataset;
    let name = "play";
    if (playing) name = "pause";
    else if (ended) name = "again";
    else if (trying) name = "tried";
    get("play").textContent = get("play").dataset[name] ?? "";
  }

  // ---- time and voice ------------------------------------------------------------------------------------

  function quiet() {
    turn += 1;
    clearTimeout(timer);
    if (voice) voice.cancel();
  }

  /** @param {number} milliseconds @param {() => unknown} act */
  function later(milliseconds, act) {
    timer = setTimeout(act, milliseconds);
  }

  /**
   * Read a step's sentences one after another, then call `done`; `failed` when the browser stays silent.
   * @param {HTMLElement} step
   * @param {() => unknown} done
   * @param {() => unknown} failed
   */
  function read(step, done, failed) {
    const mine = turn;
    const said = all(step, "[data-aloud]").map((sentence) => sentence.dataset.aloud ?? "");
    const silent = () => {
      quiet();
      failed();
    };
    const sayFrom = (/** @type {number} */ at) => {
      if (mine !== turn) return;
      if (at === said.length) {
        done();
        return;
      }
      const utterance = new SpeechSynthesisUtterance(said[at]);
      utterance.lang = document.documentElement.lang;
      utterance.rate = 0.9;
      utterance.onstart = () => clearTimeout(timer);
      utterance.onend = () => sayFrom(at + 1);
      utterance.onerror = () => mine === turn && silent();
      voice?.speak(utterance);
      later(3000, silent);
    };
    later(Number(step.dataset.think), () => sayFrom(0));
  }

  /** Show a step and, while playing, plan the next one; a step to try stops here. @param {number} at */
  function go(at) {
    quiet();
    show(at);
    const step = steps[now].element;
    if (now === steps.length - 1 || "try" in step.dataset) playing = false;
    nameButton();
    const following = () => playing && go(now + 1);
    const silently = () => playing && later(Number(step.dataset.lasts), following);
    if (aloud.checked) read(step, () => playing && later(600, following), silently);
    else silently();
  }

  function play() {
    if (playing) {
      playing = false;
      quiet();
      nameButton();
      return;
    }
    playing = true;
    if (now === steps.length - 1) go(0);
    else if ("try" in steps[now].element.dataset) go(now + 1);
    else go(now);
  }

  /** Steps taken by hand stop the playing. @param {number} at */
  function byHand(at) {
    playing = false;
    go(at);
  }

  /** @param {number} partAt */
  function firstStepOf(partAt) {
    return steps.findIndex((step) => step.partAt === partAt);
  }

  // ---- buttons and keys ----------------------------------------------------------------------------------

  /** @type {Record<string, (() => void) | undefined>} */
  const keys = {
    " ": play,
    ArrowRight: () => byHand(now + 1),
    ArrowLeft: () => byHand(now - 1),
    Home: () => byHand(0),
  };

  document.addEventListener("keydown", (event) => {
    const act = keys[event.key];
    if (!act || event.ctrlKey || event.altKey || event.metaKey || event.shiftKey || event.repeat) return;
    if (event.key === " " && event.target instanceof Element && event.target.closest("button, input")) return; // it has a meaning there
    event.preventDefault();
    act();
  });

  get("play").addEventListener("click", play);
  get("back").addEventListener("click", () => byHand(now - 1));
  get("next").addEventListener("click", () => byHand(now + 1));
  get("start").addEventListener("click", () => byHand(0));
  aloud.addEventListener("change", () => go(now));
  links.forEach((link, partAt) => {
    link.addEventListener("click", (event) => {
      event.preventDefault();
      byHand(firstStepOf(partAt));
      get("play").focus({ preventScroll: true });
      get("player").scrollIntoView();
    });
  });
  get("all").addEventListener("click", () => {
    get("steps").hidden = !get("steps").hidden;
    get("all").textContent = get("all").dataset[get("steps").hidden ? "show" : "hide"] ?? "";
    get("all").setAttribute("aria-expanded", String(!get("steps").hidden));
  });

  addEventListener("resize", drawBoard); // a narrower board folds its lines anew

  document.body.classList.add("plays");
  for (const id of ["player", "all"]) get(id).hidden = false;
  for (const id of ["without", "steps"]) get(id).hidden = true;
  get("aloud-choice").hidden = !voice;
  const asked = parts.findIndex((part) => `#${part.id}` === location.hash);
  go(asked < 0 ? 0 : firstStepOf(asked));
}
