// The desk: the book as it is saved, its troubles, the cells that are chosen, and what is made of it.

import { Boards } from "./board.js";
import { asCage, asLine, asPicture, cellName } from "./cells.js";
import { counted, el, svg } from "./dom.js";
import { shapeOf } from "./shape.js";

const VERDICTS = { none: "No solution", several: "Several solutions", undecided: "Not decided" };

const boards = new Boards(JSON.parse(document.getElementById("measures").textContent), {});
const byId = (id) => document.getElementById(id);
const [list, status, remark, jobs] = [byId("puzzles"), byId("status"), byId("remark"), byId("jobs")];
const puzzles = new Map();
const cards = new Map();
const handout = new Set();
let chosen = { id: "", cells: [] };
let lit = { id: "", cells: [], text: "" };

const seen = new IntersectionObserver((entries) => {
  for (const entry of entries) {
    entry.target.near = entry.isIntersecting;
    if (entry.isIntersecting) draw(entry.target.dataset.id);
  }
}, { rootMargin: "600px" });

// -- puzzles

function take(event) {
  addOutlines(event.outlines);
  for (const data of event.puzzles) {
    puzzles.set(data.id, data);
    boards.grounds[data.version] = data.picture;
    data.ground = data.version;
    if (cards.has(data.id)) refresh(data);
    else cards.set(data.id, card(data));
  }
  for (const id of [...cards.keys()]) {
    if (event.order.includes(id)) continue;
    cards.get(id).remove();
    cards.delete(id);
    puzzles.delete(id);
    handout.delete(id);
  }
  const inOrder = event.order.map((id) => cards.get(id));
  if (inOrder.some((item, at) => list.children[at] !== item)) list.replaceChildren(...inOrder);
  byId("title").textContent = event.title || "The desk";
  document.title = `${event.title || "The desk"}: desk`;
  document.body.classList.toggle("stale", !event.good);
  status.textContent = said(event);
  showTroubles(event.troubles, event.good);
  allowHandout();
  document.documentElement.dataset.ready = event.waiting ? "proving" : "yes";
}

function said(event) {
  if (!event.good) return event.order.length ? "The files have mistakes; below is the book as it was before them" : "The files have mistakes";
  if (event.waiting) return `${counted(event.waiting, "puzzle")} of ${event.order.length} being proven`;
  const mend = [...puzzles.values()].filter((data) => data.known && data.known.verdict !== "unique").length;
  return `${counted(event.order.length, "puzzle")}, ${mend ? `${mend} to mend` : "all proven"}`;
}

function addOutlines(text) {
  if (!text) return;
  const root = new DOMParser().parseFromString(`<g xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink">${text}</g>`, "image/svg+xml").documentElement;
  for (const one of [...root.children]) {
    if (!document.getElementById(one.id)) byId("outlines").append(document.importNode(one, true));
  }
}

function card(data) {
  const item = el("li", { class: "card", "data-id": data.id },
    el("h2", {}), el("p", { class: "by" }), el("div", { class: "paper" }), el("p", { class: "verdict" }), el("div", { class: "rules" }),
    el("div", { class: "acts" },
      el("label", { class: "check" }, el("input", { type: "checkbox", input: (event) => mark(data.id, event.target.checked) }), "for the handout"),
      el("button", { type: "button", click: () => ask("picture", [data.id]) }, "Picture"),
      el("button", { type: "button", click: () => ask("crib", [data.id]) }, "Crib")));
  item.querySelector(".paper").addEventListener("keydown", (event) => moved(event, data.id));
  cards.set(data.id, item);
  refresh(data);
  seen.observe(item);
  return item;
}

function refresh(data) {
  const item = cards.get(data.id);
  item.querySelector("h2").textContent = data.title;
  item.querySelector(".by").textContent = [data.setter, data.id].filter(Boolean).join(" · ");
  item.querySelector(".rules").replaceChildren(...data.rules.map((rule) => el("p", {}, rule)));
  const { known } = data;
  item.querySelector(".verdict").textContent = !known ? "Being proven …"
    : known.verdict === "unique" ? `One solution · ${known.name} ${known.difficulty} · ${known.hardest}` : VERDICTS[known.verdict];
  item.classList.toggle("proving", !known);
  item.dataset.version = data.version;
  if (item.near || item.drawn) draw(data.id);
}

function draw(id) {
  const [data, item] = [puzzles.get(id), cards.get(id)];
  if (!data || (item.drawn === data.version && item.litAs === key(id))) return;
  const shape = shapeOf(data);
  const cells = (lit.id === id ? lit.cells : []).map(([row, column]) => shape.at(row, column)).filter((cell) => cell !== undefined);
  const view = { digits: data.digits, look: cells, shade: cells };
  if (data.known?.pair.length) view.differ = data.digits.flatMap((_, cell) => (data.known.pair[0][cell] === data.known.pair[1][cell] ? [] : [cell]));
  const board = boards.draw(data, view, "");
  board.removeAttribute("aria-hidden");
  board.setAttribute("role", "group");
  board.setAttribute("aria-label", `${data.title}: cells`);
  board.append(layer(data, shape));
  const held = item.contains(document.activeElement) ? document.activeElement.dataset.cell : null;
  item.querySelector(".paper").replaceChildren(board);
  if (held) board.querySelector(`[data-cell="${held}"]`)?.focus({ preventScroll: true });
  item.drawn = data.version;
  item.litAs = key(id);
}

function key(id) {
  return JSON.stringify([lit.id === id ? lit.cells : [], chosen.id === id ? chosen.cells : []]);
}

// -- cells

function layer(data, shape) {
  const side = boards.m.cell;
  const mine = chosen.id === data.id ? chosen.cells : [];
  const first = mine.length ? mine[mine.length - 1] : 0;
  return svg("g", { class: "cells" }, data.digits.map((digit, cell) => {
    const name = digit ? `${cellName(shape, cell)}, ${data.symbols[digit - 1]}` : cellName(shape, cell);
    const [row, column] = shape.place(cell);
    return svg("rect", { x: column * side + 1.5, y: row * side + 1.5, width: side - 3, height: side - 3,
      role: "button", tabindex: cell === first ? 0 : -1, "aria-label": name, "aria-pressed": String(mine.includes(cell)), "data-cell": cell,
      click: () => choose(data.id, cell) });
  }));
}

function choose(id, cell) {
  const before = chosen.id;
  const cells = before === id ? chosen.cells : [];
  chosen = { id, cells: cells.includes(cell) ? cells.filter((one) => one !== cell) : [...cells, cell] };
  for (const one of new Set([before, id])) if (one && cards.has(one)) draw(one);
  cards.get(id).querySelector(`[data-cell="${cell}"]`)?.focus({ preventScroll: true });
  showCells();
}

function moved(event, id) {
  const cell = Number(event.target.dataset?.cell ?? NaN);
  if (Number.isNaN(cell)) return;
  const shape = shapeOf(puzzles.get(id));
  const [row, column] = shape.place(cell);
  const to = { ArrowUp: [row - 1, column], ArrowDown: [row + 1, column], ArrowLeft: [row, column - 1], ArrowRight: [row, column + 1] }[event.key];
  if (to) {
    event.preventDefault();
    const beside = shape.at(...to);
    if (beside !== undefined) {
      const next = event.currentTarget.querySelector(`[data-cell="${beside}"]`);
      for (const one of event.currentTarget.querySelectorAll('[tabindex="0"]')) one.setAttribute("tabindex", "-1");
      next.setAttribute("tabindex", "0");
      next.focus();
    }
  } else if (event.key === " " || event.key === "Enter") {
    event.preventDefault();
    choose(id, cell);
  } else if (event.key === "Escape" && chosen.cells.length) {
    event.preventDefault();
    clear();
  }
}

function clear() {
  const { id } = chosen;
  chosen = { id: "", cells: [] };
  if (cards.has(id)) draw(id);
  showCells();
}

const total = el("input", { type: "number", min: 1, max: 999, input: () => fill() });
const texts = { line: "Cells", cage: "Cage", picture: "Picture" };
const outputs = Object.fromEntries(Object.keys(texts).map((name) => [name, el("textarea", { readonly: true, rows: 1, spellcheck: "false", "aria-label": texts[name] })]));
byId("cells").append(
  ...Object.entries(texts).map(([name, label]) => el("div", { class: "text" }, el("h3", {}, label),
    name === "cage" ? el("label", {}, "Total", total) : "", outputs[name],
    el("button", { type: "button", "aria-label": `Copy: ${label}`, click: () => copy(outputs[name]) }, "Copy"))),
  el("button", { type: "button", click: () => clear() }, "Choose none"));

function showCells() {
  byId("cells").hidden = !chosen.cells.length;
  fill();
}

function fill() {
  const data = puzzles.get(chosen.id);
  if (!data || !chosen.cells.length) return;
  const shape = shapeOf(data);
  outputs.line.value = asLine(shape, chosen.cells);
  outputs.cage.value = asCage(shape, chosen.cells, total.valueAsNumber || 0);
  outputs.picture.value = asPicture(shape, chosen.cells);
  outputs.picture.rows = shape.rows;
}

async function copy(output) {
  output.select();
  try {
    await navigator.clipboard.writeText(output.value);
    remark.textContent = "Copied";
  } catch {
    remark.textContent = "Press Ctrl-C to copy what is selected";
  }
}

// -- troubles

function showTroubles(troubles, good) {
  const section = byId("troubles");
  byId("troubles-title").textContent = troubles.length ? counted(troubles.length, "trouble") : "No troubles";
  section.classList.toggle("grave", !good);
  if (lit.text && !troubles.some((one) => one.text === lit.text)) {
    const { id } = lit;
    lit = { id: "", cells: [], text: "" };
    if (cards.has(id)) draw(id);
  }
  section.querySelector("ol").replaceChildren(...troubles.map((one) => el("li", { class: one.warning ? "look" : "wrong" },
    el("p", { class: "where" }, one.place),
    cards.has(one.puzzle) ? el("button", { type: "button", class: "plain what", click: () => light(one) }, one.text) : el("p", { class: "what" }, one.text),
    one.excerpt ? el("pre", { tabindex: 0, "aria-label": "The lines" }, one.excerpt) : "",
    one.hint ? el("p", { class: "cure" }, one.hint) : "")));
}

function light(trouble) {
  const before = lit.id;
  lit = { id: trouble.puzzle, cells: trouble.cells, text: trouble.text };
  if (before && before !== lit.id && cards.has(before)) draw(before);
  cards.get(lit.id).scrollIntoView({ block: "nearest" });
  draw(lit.id);
  remark.textContent = trouble.cells.length ? `${counted(trouble.cells.length, "cell")} marked in ${puzzles.get(lit.id).title}` : puzzles.get(lit.id).title;
}

// -- what is made

function mark(id, on) {
  if (on) handout.add(id);
  else handout.delete(id);
  allowHandout();
}

function allowHandout() {
  document.querySelector('[data-make="handout"]').disabled = !handout.size;
}

for (const button of document.querySelectorAll("[data-make]")) {
  const { make } = button.dataset;
  button.addEventListener("click", () => ask(make, make === "handout" ? [...handout] : []));
}

async function ask(make, ids) {
  const answer = await fetch("make", { method: "POST", body: JSON.stringify({ make, ids }) });
  if (!answer.ok) {
    remark.textContent = "That can’t be made just now";
    return;
  }
  const { job } = await answer.json();
  const what = { typeset: "Book", draft: "Draft", handout: "Handout", review: "Review page", crib: "Crib", picture: "Picture" }[make];
  jobs.prepend(el("li", { "data-job": job }, el("span", { class: "what" }, [what, ...ids].join(" ")), el("progress", { "aria-label": `${what}: progress` }), el("span", { class: "doing" })));
  for (const event of early.get(job) ?? []) work(event);
  early.delete(job);
}

const early = new Map();

function work(event) {
  const item = jobs.querySelector(`[data-job="${event.job}"]`);
  if (!item) {
    early.set(event.job, [...(early.get(event.job) ?? []), event]);
    return;
  }
  if (event.type === "job") {
    const bar = item.querySelector("progress");
    if (event.of) {
      bar.max = event.of;
      bar.value = event.done;
      item.querySelector(".doing").textContent = `${event.doing}: ${event.done} of ${event.of}`;
    }
    return;
  }
  item.querySelector("progress").remove();
  item.querySelector(".doing").replaceChildren(...(event.wrong
    ? [el("pre", { tabindex: 0 }, event.wrong)]
    : event.files.map((name) => el("a", { href: `made/${event.job}/${encodeURIComponent(name)}`, download: name }, name))));
}

// -- the stream

const stream = new EventSource("events");
stream.onmessage = ({ data }) => {
  const event = JSON.parse(data);
  if (event.type === "book") take(event);
  else if (event.type === "fault") status.textContent = event.text;
  else work(event);
};
stream.onerror = () => {
  status.textContent = "The desk is closed; “bookmaker desk” opens it again";
};
