// Cells that were chosen on a picture, as text for a manifest.

export function cellName(size, cell) {
  return `r${Math.floor(cell / size) + 1}c${(cell % size) + 1}`;
}

// “r1c1-r1c4 r2c5”: in the order chosen, straight and diagonal runs drawn together.
export function asLine(size, cells) {
  const parts = [];
  let at = 0;
  while (at < cells.length) {
    let end = at;
    const step = (from) => [Math.floor(cells[from + 1] / size) - Math.floor(cells[from] / size), (cells[from + 1] % size) - (cells[from] % size)];
    if (at + 1 < cells.length) {
      const [down, across] = step(at);
      if (Math.abs(down) <= 1 && Math.abs(across) <= 1) {
        end = at + 1;
        while (end + 1 < cells.length && step(end)[0] === down && step(end)[1] === across) end += 1;
      }
    }
    if (end - at < 2) end = at; // a run of two is as short as its cells
    parts.push(end > at ? `${cellName(size, cells[at])}-${cellName(size, cells[end])}` : cellName(size, cells[at]));
    at = end + 1;
  }
  return parts.join(" ");
}

// A line of a list of cages.
export function asCage(size, cells, total) {
  const line = asLine(size, [...cells].sort((a, b) => a - b));
  return total ? `- {cells: ${line}, total: ${total}}` : `- ${line}`;
}

// A picture of the grid with a letter at the chosen cells and dots elsewhere.
export function asPicture(size, cells, letter = "a") {
  const rows = [];
  for (let row = 0; row < size; row += 1) {
    const signs = [];
    for (let column = 0; column < size; column += 1) signs.push(cells.includes(row * size + column) ? letter : ".");
    rows.push(signs.join(" "));
  }
  return rows.join("\n");
}
