// The board in its frame is as high as what stands on it; chapters wind the film; recordings are heard in place.

import { make } from "./kit.js";

const board = document.getElementById("board");

function fit() {
  const inside = board.contentDocument?.querySelector("body");
  if (inside) board.style.height = `${Math.max(480, inside.scrollHeight + 40)}px`;
}

function watch() {
  const inside = board.contentDocument?.querySelector("body");
  if (!inside) return;
  new ResizeObserver(fit).observe(inside);
  fit();
}

board.addEventListener("load", watch);
if (board.contentDocument?.readyState === "complete") watch();

const chapters = document.getElementById("chapters");
if (chapters) {
  const video = document.getElementById("video");
  chapters.hidden = false;
  chapters.addEventListener("click", (event) => {
    const second = event.target.closest("[data-second]")?.dataset.second;
    if (second === undefined) return;
    video.currentTime = Number(second);
    video.play().catch(() => {}); // it stands at the chapter and waits
  });
}

document.addEventListener("click", (event) => {
  const link = event.target.closest("[data-listen]");
  if (!link) return;
  event.preventDefault();
  const part = link.closest("[data-part]");
  part.querySelector("audio")?.remove();
  const sound = make("audio", { controls: true, src: link.href, "aria-label": link.textContent });
  part.append(sound);
  sound.play().catch(() => {});
});
