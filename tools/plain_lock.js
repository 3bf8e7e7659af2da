// Leaves names, versions and checksums in package-lock.json, and no address of anything.

import { readFileSync, writeFileSync } from "node:fs";

const LOCK = new URL("../package-lock.json", import.meta.url);

/** @type {{ packages: Record<string, { resolved?: string, funding?: unknown }> }} */
const lock = JSON.parse(readFileSync(LOCK, "utf8"));
for (const one of Object.values(lock.packages)) {
  delete one.resolved;
  delete one.funding;
}
writeFileSync(LOCK, `${JSON.stringify(lock, null, 2)}\n`);
