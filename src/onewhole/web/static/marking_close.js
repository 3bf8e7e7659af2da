// Whether the grid stands close together: kept for the class.

import { ask, get } from "./kit.js";

/** Keep what is chosen; where that fails, it holds for this window. */
export function listenToClose() {
  const close = get("close", HTMLInputElement);
  close.addEventListener("change", () => {
    ask(close.dataset.keeps ?? "", { close: close.checked ? "yes" : "" }).catch(() => undefined);
  });
}
