// The picture of the answer one is in, where it came from a paper; pictures dropped on the grid are read.

import { get } from "./kit.js";
import { listenToDrops } from "./photos_drop.js";

/** @typedef {import("./marking_desk.js").Desk} Desk */

/** @param {Desk} desk */
export function listenToPhotos(desk) {
  const crop = get("crop", HTMLImageElement);
  desk.grid.table.addEventListener("focusin", (event) => {
    const place = event.target instanceof Element ? event.target.closest("td") : null;
    const { photo = "" } = place?.dataset ?? {};
    crop.hidden = !photo;
    if (!photo) return;
    crop.alt = `What is written on the paper: ${desk.here.name}`;
    if (crop.getAttribute("src") !== photo) crop.src = photo;
  });
  listenToDrops(get("photos-form", HTMLFormElement), get("photos-field", HTMLInputElement), async () => {
    desk.commit(desk.here);
    await desk.saving.rest();
    if (!desk.saving.idle) desk.announce("Not read: some cells are not kept yet.");
    return desk.saving.idle;
  });
}
