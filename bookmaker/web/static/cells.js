// Cells that were chosen on a picture, as text for a manifest.

export function cellName(shape, cell) {
  const [row, column] = shape.place(cell);
  return `r${row + 1}c${column + 1}`;
}

// “r1c1-r1c4 r2c5”: in the order chosen, straight and diagonal runs drawn together.
export function asLine(shape, cells) {
  const parts = [];
  let at = 0;
  while (at < cells.length) {
    let end = at;
    const step = (from) => shape.place(cells[from + 1]).map((line, way) => line - shape.place(cells[from])[way]);
    if (at + 1 < cells.length) {
      const [down, across] = step(at);
      if (Math.abs(down) <= 1 && Math.abs(across) <= 1) {
        end = at + 1;
        while (end + 1 < cells.length && step(end)[0] === down && step(end)[1] === across) end += 1;
      }
    }
    if (end - at < 2) end = at; // a run of two is as short as its cells
    parts.push(end > at ? `${cellName(shape, cells[at])}-${cellName(shape, cells[end])}` : cellName(shape, cells[at]));
    at = end + 1;
  }
  return parts.join(" ");
}

// A line of a list of cages.
export function asCage(shape, cells, total) {
  const line = asLine(shape, [...cells].sort((a, b) => a - b));
  return total ? `- {cells: ${line}, total: ${total}}` : `- ${line}`;
}

// A picture of the grid with a letter at the chosen cells and dots elsewhere, and “#” where there is no cell.
export function asPicture(shape, cells, letter = "a") {
  const rows = [];
  for (let row = 0; row < shape.rows; row += 1) {
    const signs = [];
    for (let column = 0; column < shape.columns; column += 1) {
      const cell = shape.at(row, column);
      signs.push(cell === undefined ? "#" : cells.includes(cell) ? letter : ".");
    }
    rows.push(signs.join(" "));
  }
  return rows.join("\n");
}
