// Help: an example is copied by one click.

import { all, say } from "./kit.js";

for (const button of all(document, "[data-copy]")) {
  if (!navigator.clipboard) break;
  button.hidden = false;
  button.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(button.dataset.copy ?? "");
      say("Copied. Paste it on the Page desk.");
    } catch {
      say("The browser did not let it be copied. Choose the example and copy it yourself.");
    }
  });
}
