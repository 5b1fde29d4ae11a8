// Which cells a grid has: those of a square, or those at the places that a puzzle tells.

export function shapeOf(puzzle) {
  const side = Math.round(Math.sqrt(puzzle.digits.length));
  const [rows, columns] = puzzle.extent ?? [side, side];
  const numbers = puzzle.places && new Map(puzzle.places.map(([row, column], cell) => [row * columns + column, cell]));
  const place = (cell) => (puzzle.places ? puzzle.places[cell] : [Math.floor(cell / columns), cell % columns]);
  // The cell at a row and column from 0; undefined where there is none.
  const at = (row, column) => {
    if (row < 0 || column < 0 || row >= rows || column >= columns) return undefined;
    return numbers ? numbers.get(row * columns + column) : row * columns + column;
  };
  return { rows, columns, place, at };
}
