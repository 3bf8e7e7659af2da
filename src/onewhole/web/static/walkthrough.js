// The board in its frame is as high as what stands on it; chapters wind the film; recordings are heard in place.

import { all, around, get, make } from "./kit.js";

const board = get("board", HTMLIFrameElement);

function watch() {
  const inside = board.contentDocument?.querySelector("body");
  if (!inside) return;
  inside.classList.add("framed"); // its title stands over the frame already
  const fit = () => { board.style.height = `${Math.max(480, inside.scrollHeight + 40)}px`; };
  new ResizeObserver(fit).observe(inside);
  fit();
}

board.addEventListener("load", watch);
if (board.contentDocument?.readyState === "complete") watch();

const film = document.getElementById("video");
if (film) {
  const video = get("video", HTMLVideoElement);
  get("chapters").hidden = false;
  for (const button of all(document, ".slips [data-second]")) button.hidden = false;
  get("film").addEventListener("click", (event) => {
    const second = around(event, "[data-second]")?.dataset.second;
    if (second === undefined) return;
    video.currentTime = Number(second);
    video.scrollIntoView({ block: "nearest" }); // what was said is compared with what the board shows
    video.play().catch(() => {}); // it stands at the chapter and waits
  });
}

document.addEventListener("click", (event) => {
  const link = around(event, "[data-listen]");
  const part = link?.closest("[data-part]");
  if (!(link instanceof HTMLAnchorElement) || !part) return;
  event.preventDefault();
  part.querySelector("audio")?.remove();
  const sound = make("audio", { controls: true, src: link.href, "aria-label": link.textContent });
  part.append(sound);
  sound.play().catch(() => {});
});
