// A block of cells: picked with Shift and the arrows or a click, cleared with Delete, taken back like any other change.

/** @typedef {import("./marking_cell.js").Cell} Cell */
/** @typedef {import("./marking_desk.js").Desk} Desk */
/** Where a cell is. @typedef {{ row: number, column: number }} Spot */

/**
 * Where the far end of a block goes by a key; null for a key that picks nothing.
 * @param {{ key: string, ctrlKey: boolean, metaKey: boolean }} pressed
 * @param {Spot} spot
 * @param {Spot} last the last cell of the grid
 * @returns {Spot | null}
 */
export function stretched({ key, ctrlKey, metaKey }, { row, column }, last) {
  const all = ctrlKey || metaKey;
  switch (key) {
    case "ArrowUp": return { row: all ? 0 : Math.max(0, row - 1), column };
    case "ArrowDown": return { row: all ? last.row : Math.min(last.row, row + 1), column };
    case "ArrowLeft": return { row, column: all ? 0 : Math.max(0, column - 1) };
    case "ArrowRight": return { row, column: all ? last.column : Math.min(last.column, column + 1) };
    case "Home": return { row: all ? 0 : row, column: 0 };
    case "End": return { row: all ? last.row : row, column: last.column };
    default: return null;
  }
}

/**
 * Whether a cell is in the block between two others.
 * @param {Spot} cell
 * @param {Spot} from
 * @param {Spot} to
 */
export const within = ({ row, column }, from, to) => row >= Math.min(from.row, to.row) && row <= Math.max(from.row, to.row)
  && column >= Math.min(from.column, to.column) && column <= Math.max(from.column, to.column);

class Block {
  /** @param {Desk} desk */
  constructor(desk) {
    this.desk = desk;
    /** @type {Spot | null} */
    this.far = null;
  }

  get cells() {
    const { far, desk } = this;
    return far ? desk.grid.every.filter((cell) => within(cell, desk.here, far)) : [];
  }

  /** @param {Spot | null} far */
  reach(far) {
    const { grid, here } = this.desk;
    this.far = far && within(far, here, here) ? null : far;
    for (const cell of grid.every) {
      const isIn = this.far !== null && within(cell, here, this.far);
      if (isIn !== cell.td.hasAttribute("aria-selected")) {
        if (isIn) cell.td.setAttribute("aria-selected", "true");
        else cell.td.removeAttribute("aria-selected");
      }
    }
    if (!this.far) return;
    grid.rows[this.far.row][this.far.column].td.scrollIntoView({ block: "nearest", inline: "nearest" });
    this.desk.announce(`${this.cells.length} cells are picked. Delete clears them.`);
  }

  clear() {
    const filled = this.cells.filter((cell) => cell.text);
    this.desk.change(filled.map((cell) => [cell, ""]));
    this.reach(null);
    this.desk.tell();
    this.desk.announce(`${filled.length === 1 ? "1 cell is" : `${filled.length} cells are`} cleared. Ctrl Z brings them back.`);
  }

  /**
   * Whether a key was for the block.
   * @param {KeyboardEvent} event
   */
  took(event) {
    const { grid, here } = this.desk;
    if (event.altKey || event.isComposing || here.editing) return false;
    if (event.shiftKey) {
      const far = stretched(event, this.far ?? here, { row: grid.rows.length - 1, column: grid.heads.length - 1 });
      if (far) this.reach(far);
      return far !== null;
    }
    if (!this.far) return false;
    if (event.key === "Delete" || event.key === "Backspace") this.clear();
    else this.reach(null);
    return ["Delete", "Backspace", "Escape"].includes(event.key);
  }
}

/** @param {Desk} desk */
export function listenToBlock(desk) {
  const block = new Block(desk);
  const { grid } = desk;
  grid.table.addEventListener("keydown", (event) => {
    if (!grid.at(event) || !block.took(event)) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  });
  grid.table.addEventListener("mousedown", (event) => {
    const cell = grid.at(event);
    if (event.shiftKey && cell && !desk.here.editing) {
      event.preventDefault();
      block.reach(cell);
    } else block.reach(null);
  });
  grid.table.addEventListener("input", () => block.reach(null));
}
