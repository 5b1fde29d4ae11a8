// A told path, frame by frame: what the board shows before the first step, at each of them, and after the last.

export class Walk {
  constructor(puzzle) {
    this.puzzle = puzzle;
    this.frames = puzzle.frames;
  }

  get last() {
    return this.frames.length;
  }

  // The board at a frame; 0 is the puzzle as it is given. What is written at a frame is already there.
  view(at) {
    const digits = [...this.puzzle.digits];
    let masks = [...this.puzzle.start];
    for (let number = 0; number < at; number += 1) {
      const frame = this.frames[number];
      for (const [cell, mask] of frame.change ?? []) masks[cell] = mask;
      if (frame.goes) digits[frame.goes[0]] = frame.goes[1];
    }
    const here = at ? this.frames[at - 1] : {};
    masks = masks.map((mask, cell) => (digits[cell] ? 0 : mask));
    return { ...here, digits, masks, bold: at > 0 };
  }

  // The frame that shows a step of the path; the next one where that step is not told.
  frameOf(step) {
    const found = this.frames.findIndex((frame) => frame.step >= step);
    return found < 0 ? this.last : found + 1;
  }

  frameAt(moment) {
    const found = this.frames.findIndex((frame) => frame.moment >= moment);
    return found < 0 ? this.last : found + 1;
  }
}

// The solve profile as it is printed: the outline of a walk, arrowheads at the sticking points.
export function outline(efforts, narrow, wide, high) {
  const step = wide / efforts.length;
  const mark = 0.16 * high;
  const room = high - 1.5 * mark;
  const ceiling = Math.log1p(Math.max(...efforts));
  const tops = efforts.map((effort) => high - (room * Math.log1p(effort)) / (ceiling || 1));
  const way = tops.map((top, at) => `V${top.toFixed(2)}H${((at + 1) * step).toFixed(2)}`).join("");
  const heads = narrow.map((at) => {
    const x = Math.min(Math.max((at + 0.5) * step, mark / 2), wide - mark / 2);
    const y = tops[at] - 0.4 * mark;
    return `M${x} ${y}L${x - mark / 2} ${y - mark}H${x + mark / 2}Z`;
  });
  return { way: `M0 ${high}${way}V${high}Z`, heads: heads.join("") };
}
