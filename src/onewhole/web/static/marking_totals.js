// How many of the answers tried are right: beside each pupil and under each problem.

import { all } from "./kit.js";

const RIGHT = new Set(["right", "form"]);
const TRIED = new Set([...RIGHT, "wrong", "unreadable"]);

/**
 * Count verdicts as the server does.
 * @param {string[]} verdicts
 */
export function counted(verdicts) {
  return `${verdicts.filter((one) => RIGHT.has(one)).length} of ${verdicts.filter((one) => TRIED.has(one)).length}`;
}

/**
 * Keep the totals right while cells are judged.
 * @param {import("./marking_grid.js").Grid} grid
 */
export function listenToTotals(grid) {
  const beside = all(grid.table, "tbody .total");
  const under = all(grid.table, "tfoot td");
  const verdictOf = (/** @type {import("./marking_cell.js").Cell} */ cell) => cell.td.dataset.verdict ?? "";
  const count = () => {
    const verdicts = grid.rows.map((row) => row.map(verdictOf));
    const told = [...verdicts.map(counted), ...grid.heads.map((_, at) => counted(verdicts.map((row) => row[at])))];
    [...beside, ...under].forEach((place, at) => { if (place.textContent !== told[at]) place.textContent = told[at]; });
  };
  new MutationObserver(count).observe(grid.table.tBodies[0], { subtree: true, attributes: true, attributeFilter: ["data-verdict"] });
}
