// A grid as it is printed, with digits, candidates and the signs of a presenter's crib.
//
// The ground (lines and marks) comes drawn; digits stand where the page's measures say they stand in print.

import { svg } from "./dom.js";
import { shapeOf } from "./shape.js";

export class Boards {
  constructor(measures, grounds) {
    this.m = measures;
    this.grounds = grounds;
    this.parsed = new Map();
  }

  // `view`: digits; and perhaps given, masks (all candidates), pencil ([cell, mask] of some cells), look, shade, struck
  // ([cell, digit]), goes ([cell, digit]), differ (cells).
  draw(puzzle, view, label) {
    const shape = shapeOf(puzzle);
    this.symbols = puzzle.symbols;
    const cell = this.m.cell;
    const box = `${-puzzle.left} ${-puzzle.top} ${puzzle.wide} ${puzzle.high}`;
    const named = label ? { role: "img", "aria-label": label } : { "aria-hidden": "true" };
    const board = svg("svg", { class: "board", viewBox: box, ...named });
    const at = (number) => shape.place(number).map((line) => line * cell).reverse();
    board.append(svg("rect", { x: -puzzle.left, y: -puzzle.top, width: puzzle.wide, height: puzzle.high, fill: "#fff" }));
    for (const number of [...(view.shade ?? []), ...(view.differ ?? [])]) {
      const [x, y] = at(number);
      board.append(svg("rect", { x, y, width: cell, height: cell, fill: grey(this.m.signs.shade) }));
    }
    board.append(svg("g", { transform: `translate(${-puzzle.left} ${-puzzle.top})` }, this.ground(puzzle.ground)));
    view.digits.forEach((digit, number) => {
      if (digit) this.digit(board, at(number), digit, puzzle.digits[number] > 0 && view.bold, puzzle.halo);
    });
    const goes = view.goes ? view.goes[0] : -1;
    for (const number of [...(view.look ?? []), ...(view.differ ?? [])]) {
      if (number !== goes) board.append(this.corners(at(number)));
    }
    if (goes >= 0) board.append(this.frame(at(goes)));
    if (view.masks) this.inRank(board, at, view, puzzle.symbols.length);
    else this.inSight(board, at, view);
    return board;
  }

  ground(number) {
    if (!this.parsed.has(number)) {
      const text = `<g xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink">${this.grounds[number]}</g>`;
      const root = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
      for (const named of root.querySelectorAll("[aria-label]")) named.removeAttribute("aria-label");
      this.parsed.set(number, root);
    }
    return document.importNode(this.parsed.get(number), true);
  }

  digit(board, [x, y], digit, bold, halo) {
    const middle = [x + this.m.cell / 2, y + this.m.cell / 2];
    if (halo) {
      const edge = this.figure(middle, digit, this.m.digit, "sans");
      edge.setAttribute("stroke", "#fff");
      edge.setAttribute("stroke-width", String(this.m.halo * 1000));
      edge.setAttribute("stroke-linejoin", "round");
      board.append(edge);
    }
    board.append(this.figure(middle, digit, this.m.digit, bold ? "sans-bold" : "sans"));
  }

  // A digit centred on a point by its own height, which is a share of the cell.
  figure([x, y], digit, height, face) {
    const size = (height * this.m.cell) / this.m.figure;
    const left = x - (this.m.advances[face][this.symbols[digit - 1]] * size) / 2;
    const code = this.symbols.charCodeAt(digit - 1).toString(16).padStart(4, "0");
    const place = `translate(${round(left)} ${round(y + (height * this.m.cell) / 2)})`;
    const scale = (size / 1000).toPrecision(5);
    return svg("use", { href: `#${face}-${code}`, transform: `${place} scale(${scale} -${scale})` });
  }

  corners([x, y]) {
    const { inset, arm, heavy } = this.m.signs;
    const c = this.m.cell;
    const way = [[inset, arm], [1 - inset, -arm]].flatMap(([across, right]) =>
      [[inset, arm], [1 - inset, -arm]].map(([down, along]) =>
        `M${x + (across + right) * c} ${y + down * c}H${x + across * c}V${y + (down + along) * c}`));
    return svg("path", { d: way.join(""), fill: "none", stroke: "#000", "stroke-width": heavy * c });
  }

  frame([x, y]) {
    const { inset, heavy } = this.m.signs;
    const c = this.m.cell;
    const side = c * (1 - 2 * inset);
    return svg("rect", { x: x + inset * c, y: y + inset * c, width: side, height: side, rx: 0.1 * c,
      fill: "none", stroke: "#000", "stroke-width": heavy * c });
  }

  through([x, y], high) {
    return svg("path", { d: `M${x - 0.42 * high} ${y + 0.68 * high}L${x + 0.42 * high} ${y - 0.68 * high}`,
      stroke: "#000", "stroke-width": Math.max(0.5, 0.08 * high) });
  }

  // Every candidate at its own place in the cell, row by row.
  inRank(board, at, view, size) {
    const [left, top, wide] = this.m.pencil;
    const across = size > 16 ? 5 : size > 9 ? 4 : 3;
    const step = wide / across;
    const high = 0.48 / across;
    const struck = new Set((view.struck ?? []).map(([cell, digit]) => cell * 32 + digit));
    view.masks.forEach((mask, number) => {
      if (!mask || view.digits[number]) return;
      const [x, y] = at(number);
      for (const digit of digitsIn(mask)) {
        const [row, column] = [Math.floor((digit - 1) / across), (digit - 1) % across];
        const centre = [x + (left + (column + 0.5) * step) * this.m.cell, y + (top + (row + 0.5) * step) * this.m.cell];
        board.append(this.figure(centre, digit, high, "sans"));
        if (struck.has(number * 32 + digit)) board.append(this.through(centre, high * this.m.cell));
      }
    });
  }

  // The candidates of the cells that a sentence speaks of: one in the middle, a few large, many in rank and file.
  inSight(board, at, view) {
    const { field, few, shade } = this.m.signs;
    const c = this.m.cell;
    const struck = new Set((view.struck ?? []).map(([cell, digit]) => cell * 32 + digit));
    for (const [number, mask] of view.pencil ?? []) {
      if (view.digits[number]) continue;
      const digits = digitsIn(mask);
      const across = Math.ceil(Math.sqrt(digits.length));
      const down = Math.ceil(digits.length / across);
      const step = field / Math.max(across, 2);
      const high = Math.min(few, 0.8 * step);
      const [right, below] = [step * c, 1.06 * step * c];
      const [x, y] = at(number);
      const left = x + c / 2 - ((across - 1) / 2) * right;
      const top = y + c / 2 - ((down - 1) / 2) * below;
      const [edge, rim] = [0.5 * high * c, 0.66 * high * c];
      const fill = (view.shade ?? []).includes(number) ? grey(shade) : "#fff";
      board.append(svg("rect", { x: left - edge, y: top - rim, width: (across - 1) * right + 2 * edge,
        height: (down - 1) * below + 2 * rim, rx: edge, fill }));
      digits.forEach((digit, index) => {
        const centre = [left + (index % across) * right, top + Math.floor(index / across) * below];
        board.append(this.figure(centre, digit, high, "sans"));
        if (struck.has(number * 32 + digit)) board.append(this.through(centre, high * c));
      });
    }
  }
}

export function digitsIn(mask) {
  const found = [];
  for (let digit = 1; mask; digit += 1, mask >>= 1) if (mask & 1) found.push(digit);
  return found;
}

function grey(level) {
  const value = Math.round(level * 255).toString(16).padStart(2, "0");
  return `#${value}${value}${value}`;
}

function round(value) {
  return Math.round(value * 1000) / 1000;
}
