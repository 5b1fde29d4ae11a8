// How bands, kinds and setters are spread, as bars that also choose.

import { counted, el } from "./dom.js";

const FEW = 8;

export function spread(title, rows, chosen, choose) {
  const most = Math.max(1, ...rows.map(([, count]) => count));
  const bar = ([name, count, mark]) => {
    const length = el("span", { class: "length" });
    length.style.inlineSize = `${(100 * count) / most}%`;
    return el("li", {},
      el("button", { type: "button", class: "bar", "aria-pressed": String(chosen === name), click: () => choose(name) },
        el("span", { class: "name" }, mark ?? "", name),
        el("span", { class: "track", "aria-hidden": "true" }, length),
        el("span", { class: "number" }, String(count))));
  };
  const list = el("ul", {}, rows.slice(0, FEW).map(bar));
  const figure = el("section", { class: "spread", "aria-label": title }, el("h2", {}, title), list);
  if (rows.length > FEW) {
    figure.append(el("details", {}, el("summary", {}, counted(rows.length - FEW, "more").replace("mores", "more")),
      el("ul", {}, rows.slice(FEW).map(bar))));
  }
  return figure;
}

// Names with how often they stand among the puzzles, most first.
export function tally(puzzles, namesOf) {
  const counts = new Map();
  for (const puzzle of puzzles) for (const name of namesOf(puzzle)) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || a[0].localeCompare(b[0]));
}
