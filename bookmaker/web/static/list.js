// The list of puzzles: searched, narrowed, sorted, and drawn as far as one looks.

import { capital, counted, el, svg } from "./dom.js";
import { spread, tally } from "./spread.js";
import { detail } from "./shelf.js";
import { outline } from "./walk.js";

const AT_ONCE = 40;

export const UNPROVEN = { none: "no solution", several: "several solutions", undecided: "not decided" };

const ONLY = {
  "": ["All", () => true],
  mend: ["To mend", (p) => p.verdict !== "unique" || p.disputed],
  stuck: ["With sticking points", (p) => p.narrow.length > 0],
  beyond: ["Beyond the ladder", (p) => p.verdict === "unique" && !p.reached],
  alike: ["With look-alikes", (p) => p.alike.length > 0],
  printed: ["Printed before", (p) => p.books.length > 0],
  noted: ["With a note", (p) => p.note || p.private],
};

const SORTS = {
  rank: ["As in the book", (p) => p.rank],
  difficulty: ["Difficulty", (p) => (p.band ? p.effort : Infinity)],
  title: ["Title", (p) => p.title],
  setter: ["Setter", (p) => p.setter || "\uffff"],
  shown: ["First shown", (p) => p.when || "\uffff"],
  stuck: ["Sticking points", (p) => -p.narrow.length],
  verdict: ["Verdict", (p) => (p.verdict === "unique") + p.verdict],
  permission: ["Permission", (p) => p.permission],
};

export class List {
  constructor(root, index, boards) {
    Object.assign(this, { root, index, boards, shown: [], drawn: 0 });
    this.wanted = { words: "", band: "", kind: "", setter: "", verdict: "", permission: "", tag: "", only: "", from: "", to: "" };
    this.sort = "rank";
    index.puzzles.forEach((puzzle, at) => {
      puzzle.at = at;
      puzzle.bandName = puzzle.band ? index.bands[puzzle.band - 1] : "";
      puzzle.text = [puzzle.id, puzzle.title, puzzle.setter, puzzle.bandName, puzzle.hardest, puzzle.chapter, puzzle.note,
        puzzle.private, puzzle.source, puzzle.printed, puzzle.file, ...puzzle.kinds, ...puzzle.tags].join("\n").toLowerCase();
    });
    this.charts = el("div", { class: "spreads" });
    this.count = el("p", { role: "status", class: "count" });
    this.list = el("ol", { id: "puzzles", class: "puzzles", tabindex: "-1", "aria-label": "Puzzles" });
    this.more = el("div", { class: "more" });
    root.append(this.charts, this.form(), this.count, this.list, this.more);
    new IntersectionObserver((seen) => {
      if (seen.some((entry) => entry.isIntersecting)) this.drawMore();
    }, { rootMargin: "800px" }).observe(this.more);
    this.pictures = new IntersectionObserver((seen) => {
      for (const entry of seen) if (entry.isIntersecting) this.picture(entry.target);
    }, { rootMargin: "400px" });
    this.choose();
  }

  form() {
    const { puzzles, bands } = this.index;
    const names = (namesOf) => tally(puzzles, namesOf).map(([name]) => name).sort((a, b) => a.localeCompare(b));
    const one = (value) => (value ? [value] : []);
    this.selects = {};
    const select = (key, label, options) => {
      const made = el("select", { input: () => this.want(key, made.value) },
        options.map(([value, text]) => el("option", { value }, text)));
      this.selects[key] = made;
      return el("label", {}, label, made);
    };
    const any = (values) => [["", "Any"], ...values.map((value) => [value, value])];
    const number = (key, label) => {
      const made = el("input", { type: "number", min: "1", max: "6", step: "0.1", input: () => this.want(key, made.value) });
      this.selects[key] = made;
      return el("label", {}, label, made);
    };
    const search = el("input", { type: "search", input: () => this.want("words", search.value) });
    this.selects.words = search;
    const sort = el("select", { input: () => { this.sort = sort.value; this.choose(); } },
      Object.entries(SORTS).map(([value, [text]]) => el("option", { value }, text)));
    const verdicts = names((p) => [p.verdict]).map((verdict) => [verdict, verdict === "unique" ? "one solution" : UNPROVEN[verdict]]);
    const tags = names((p) => p.tags);
    return el("form", { role: "search", class: "choose", submit: (event) => event.preventDefault() },
      el("label", { class: "wide" }, "Search", search),
      select("only", "Show", Object.entries(ONLY).map(([value, [text]]) => [value, text])),
      select("band", "Band", any(bands)),
      number("from", "Difficulty from"), number("to", "to"),
      select("kind", "Kind", any(names((p) => p.kinds))),
      select("setter", "Setter", any(names((p) => one(p.setter)))),
      select("verdict", "Verdict", [["", "Any"], ...verdicts]),
      select("permission", "Permission", any(names((p) => [p.permission]))),
      tags.length ? select("tag", "Tag", any(tags)) : "",
      el("label", {}, "In order of", sort),
      el("button", { type: "button", click: () => this.clear() }, "Show all"));
  }

  want(key, value) {
    this.wanted[key] = value;
    if (this.selects[key].value !== value) this.selects[key].value = value;
    this.choose();
  }

  clear() {
    for (const key of Object.keys(this.wanted)) {
      this.wanted[key] = "";
      if (this.selects[key]) this.selects[key].value = "";
    }
    this.choose();
  }

  fits(puzzle) {
    const w = this.wanted;
    const words = w.words.toLowerCase().split(/\s+/).filter(Boolean);
    return words.every((word) => puzzle.text.includes(word))
      && ONLY[w.only][1](puzzle)
      && (!w.band || puzzle.bandName === w.band)
      && (!w.kind || puzzle.kinds.includes(w.kind))
      && (!w.setter || puzzle.setter === w.setter)
      && (!w.verdict || puzzle.verdict === w.verdict)
      && (!w.permission || puzzle.permission === w.permission)
      && (!w.tag || puzzle.tags.includes(w.tag))
      && (!w.from || Number(puzzle.difficulty) >= Number(w.from))
      && (!w.to || (puzzle.band > 0 && Number(puzzle.difficulty) <= Number(w.to)));
  }

  choose() {
    const all = this.index.puzzles;
    const key = SORTS[this.sort][1];
    this.shown = all.filter((puzzle) => this.fits(puzzle)).sort((a, b) => {
      const [x, y] = [key(a), key(b)];
      return (typeof x === "string" ? x.localeCompare(y) : x - y) || a.rank - b.rank;
    });
    const mend = all.filter((p) => p.verdict !== "unique" || p.disputed).length;
    const of = this.shown.length === all.length ? "" : ` of ${all.length}`;
    this.count.textContent = `${counted(this.shown.length, "puzzle")}${of}${mend ? `; ${mend} to mend` : ""}`;
    this.list.replaceChildren();
    this.drawn = 0;
    this.drawMore();
    this.drawCharts();
  }

  drawCharts() {
    const pressed = document.activeElement?.closest?.(".bar")?.querySelector(".name")?.textContent;
    const count = new Map(tally(this.shown, (p) => [p.bandName]));
    const bands = this.index.bands.map((name, at) => [name, count.get(name) ?? 0, this.ridge(at + 1)]);
    const toggle = (key) => (name) => this.want(key, this.wanted[key] === name ? "" : name);
    this.charts.replaceChildren(
      spread("Bands", bands, this.wanted.band, toggle("band")),
      spread("Kinds", tally(this.shown, (p) => p.kinds), this.wanted.kind, toggle("kind")),
      spread("Setters", tally(this.shown, (p) => (p.setter ? [p.setter] : [])), this.wanted.setter, toggle("setter")));
    if (pressed) {
      const names = [...this.charts.querySelectorAll(".name")];
      names.find((name) => name.textContent === pressed)?.closest("button").focus();
    }
  }

  ridge(band) {
    const { body, wide, high } = this.index.ridges[band];
    const text = `<g xmlns="http://www.w3.org/2000/svg">${body}</g>`;
    const drawn = document.importNode(new DOMParser().parseFromString(text, "image/svg+xml").documentElement, true);
    drawn.firstElementChild.removeAttribute("aria-label");
    return svg("svg", { class: "ridge", viewBox: `-1 ${-high - 1} ${wide + 2} ${high + 2}`, "aria-hidden": "true" }, drawn);
  }

  drawMore() {
    const until = Math.min(this.drawn + AT_ONCE, this.shown.length);
    for (; this.drawn < until; this.drawn += 1) {
      const item = this.row(this.shown[this.drawn]);
      this.list.append(item);
      this.pictures.observe(item);
    }
  }

  row(puzzle) {
    const proven = puzzle.verdict === "unique";
    const wrong = proven ? (puzzle.disputed ? "differs from the setter’s solution" : "") : UNPROVEN[puzzle.verdict];
    const item = el("li", { class: "row", "data-at": puzzle.at },
      el("div", { class: "thumb" }),
      el("div", { class: "what" },
        el("h3", {}, el("a", { href: `#/${puzzle.id}` }, puzzle.title)),
        el("p", { class: "by" }, [puzzle.setter, puzzle.kinds.join(", ")].filter(Boolean).join(" · ")),
        puzzle.note ? el("p", { class: "note" }, puzzle.note) : "",
        el("p", { class: "flags" },
          wrong ? el("strong", {}, capital(wrong)) : "",
          puzzle.permission === "none" ? el("span", {}, "no permission recorded")
            : ["granted", "own"].includes(puzzle.permission) ? "" : el("span", {}, `permission ${puzzle.permission}`),
          puzzle.alike.length ? el("span", {}, counted(puzzle.alike.length, "look-alike")) : "",
          puzzle.books.length ? el("span", {}, `printed in ${puzzle.books.join(", ")}`) : "")),
      el("div", { class: "grade" },
        proven ? [el("p", { class: "band" }, this.ridge(puzzle.band), ` ${puzzle.bandName} ${puzzle.difficulty}`),
          this.profile(puzzle),
          el("p", { class: "hardest" }, puzzle.hardest)] : ""));
    return item;
  }

  profile(puzzle) {
    if (!puzzle.profile.length) return "";
    const { way, heads } = outline(puzzle.profile, puzzle.narrow, 160, 26);
    return svg("svg", { class: "profile", viewBox: "0 0 160 27", preserveAspectRatio: "none", role: "img",
      "aria-label": `Solve profile: ${counted(puzzle.narrow.length, "sticking point")}` },
      svg("path", { class: "walk", d: way }), svg("path", { class: "heads", d: heads }));
  }

  async picture(item) {
    this.pictures.unobserve(item);
    const puzzle = await detail(Number(item.dataset.at));
    item.querySelector(".thumb").replaceChildren(this.boards.draw(puzzle, { digits: puzzle.digits }, ""));
  }
}

