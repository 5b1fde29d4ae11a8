// One puzzle open: its board, its told path to step through, and all that is known of it.

import { counted, el, svg } from "./dom.js";
import { UNPROVEN } from "./list.js";
import { shapeOf } from "./shape.js";
import { Walk, outline } from "./walk.js";

const BESIDE = window.matchMedia("(min-width: 52rem)");

export class Sheet {
  constructor(index, boards, row, puzzle, neighbours, go) {
    Object.assign(this, { index, boards, row, puzzle, go, at: 0, all: false, solved: false, whole: false });
    this.walk = new Walk(puzzle);
    this.root = el("article", { class: "sheet", "aria-labelledby": "sheet-title" },
      this.navigation(neighbours), this.head(),
      row.verdict === "unique" ? this.stage() : this.broken(),
      this.facts());
    this.root.addEventListener("keydown", (event) => this.key(event));
    if (row.verdict === "unique") this.show(0);
  }

  navigation({ before, after }) {
    const link = (row, text, title) =>
      row ? el("a", { href: `#/${row.id}` }, text, el("span", { class: "unseen" }, `: ${row.title}`)) : "";
    return el("nav", { class: "leaf", "aria-label": "Puzzles" },
      el("a", { href: "#/" }, "All puzzles"), el("span", {}, link(before, "Previous"), link(after, "Next puzzle")));
  }

  head() {
    const { row } = this;
    const said = [row.setter, row.shown && `first shown ${row.shown}`, row.chapter].filter(Boolean).join(" · ");
    return el("header", {},
      el("h2", { id: "sheet-title", tabindex: "-1" }, row.title),
      said ? el("p", { class: "by" }, said) : "",
      row.band ? el("p", { class: "band" }, `${row.bandName} ${row.difficulty} · effort ${row.effort}`) : "");
  }

  stage() {
    this.board = el("div", { class: "paper" });
    this.caption = el("p", { class: "caption" });
    this.words = el("details", { class: "inwords" }, el("summary", {}, "The board in words"), el("ol", {}));
    const button = (text, act, more = {}) => el("button", { type: "button", click: act, ...more }, text);
    this.back = button("Back", () => this.step(-1));
    this.forth = button("Forward", () => this.step(1));
    const check = (text, act) => el("label", { class: "check" }, el("input", { type: "checkbox", input: (event) => act(event.target.checked) }), text);
    this.solution = button("Show the solution", () => this.reveal(), { "aria-pressed": "false" });
    this.here = el("a", { class: "here" }, "Link to this step");
    const controls = el("div", { class: "controls", role: "group", "aria-label": "Steps" },
      button("Start", () => this.to(0)), this.back, this.forth, button("End", () => this.to(this.walk.last)));
    const options = el("div", { class: "options" },
      check("All candidates", (on) => { this.all = on; this.show(this.at); }),
      check("Whole path", (on) => { this.whole = on; this.show(this.at); }),
      this.solution, this.here, button("Print", () => window.print()));
    const figure = el("figure", {}, this.board, el("figcaption", {}, this.caption), controls, this.scrubber(), options, this.words);
    return el("div", { class: "stage" }, figure, this.story());
  }

  scrubber() {
    const { profile, narrow } = this.row;
    if (!profile.length) return "";
    const { way, heads } = outline(profile, narrow, 400, 60);
    this.marker = svg("rect", { class: "marker", y: 0, height: 60, width: 400 / profile.length, x: 0 });
    const drawn = svg("svg", { class: "profile", viewBox: "0 0 400 61", preserveAspectRatio: "none", "aria-hidden": "true" },
      this.marker, svg("path", { class: "walk", d: way }), svg("path", { class: "heads", d: heads }));
    this.range = el("input", { type: "range", min: 0, max: profile.length, value: 0, step: 1, "aria-label": "Place in the path",
      input: () => this.to(this.range.valueAsNumber === 0 ? 0 : this.walk.frameAt(this.range.valueAsNumber - 1)) });
    return el("div", { class: "scrub" }, drawn, this.range);
  }

  story() {
    this.sentences = [];
    this.passages = this.puzzle.story.map((passage) => {
      const text = passage.sentences.flatMap((sentence) => {
        const tells = sentence.to > sentence.from;
        const step = tells ? this.walk.frames[sentence.from].step : 0;
        const said = tells ? el("a", { href: `#/${this.row.id}/${step}` }, sentence.text) : el("span", {}, sentence.text);
        this.sentences.push({ ...sentence, said, tells });
        return [said, " "];
      });
      return { from: passage.sentences[0].from, root: el("div", { class: "passage" },
        passage.heading ? el("h3", {}, passage.heading) : "", el("p", {}, text)) };
    });
    this.spoken = el("p", { class: "unseen", "aria-live": "polite" });
    return el("section", { class: "story", "aria-label": "The path in words" }, this.passages.map((one) => one.root), this.spoken);
  }

  // `step` counts the steps of the path, as links do; `to` goes by the frames of the telling.
  toStep(step) {
    if (this.row.verdict === "unique") this.show(step ? this.walk.frameOf(step) : 0);
  }

  to(frame) {
    this.show(frame);
    this.go(frame ? this.walk.frames[frame - 1].step : 0);
  }

  step(by) {
    const next = this.at + by;
    if (next >= 0 && next <= this.walk.last) this.to(next);
  }

  show(at) {
    this.at = at;
    const view = this.solved ? { digits: this.puzzle.solution, bold: true } : this.walk.view(at);
    if (!this.all) delete view.masks;
    const written = view.digits.filter(Boolean).length;
    const frame = at && !this.solved ? this.walk.frames[at - 1] : null;
    const place = this.solved ? "The solution" : frame ? `Step ${frame.step} of ${this.row.steps}: ${frame.technique}` : "The puzzle as given";
    const filled = `${written} of ${view.digits.length} cells filled`;
    this.caption.textContent = `${place}; ${filled}`;
    this.board.replaceChildren(this.boards.draw(this.puzzle, view, `${this.row.title}. ${place}; ${filled}`));
    this.inWords(view.digits);
    this.back.disabled = at === 0;
    this.forth.disabled = at === this.walk.last;
    if (this.range) {
      const moment = at ? this.walk.frames[at - 1].moment : -1;
      this.range.value = String(moment + 1);
      this.range.setAttribute("aria-valuetext", place);
      this.marker.setAttribute("x", String(Math.max(moment, 0) * (400 / this.row.profile.length)));
      this.marker.setAttribute("visibility", at ? "visible" : "hidden");
    }
    const step = frame ? `/${frame.step}` : "";
    this.here.setAttribute("href", `#/${this.row.id}${step}`);
    let spoken = null;
    for (const { said, from, to, tells } of this.sentences) {
      const current = tells && at > from && at <= to;
      said.toggleAttribute("aria-current", false);
      if (current) {
        said.setAttribute("aria-current", "step");
        spoken = said;
        if (this.spoken.textContent !== said.textContent) this.spoken.textContent = said.textContent;
      }
      said.classList.toggle("ahead", !this.whole && from >= at && (tells || from > 0));
    }
    for (const { from, root } of this.passages) root.hidden = !this.whole && from > 0 && from >= at;
    if (spoken && BESIDE.matches && this.root.isConnected) spoken.scrollIntoView({ block: "nearest" });
  }

  inWords(digits) {
    const shape = shapeOf(this.puzzle);
    const rows = [];
    for (let row = 0; row < shape.rows; row += 1) {
      const cells = [];
      for (let column = 0; column < shape.columns; column += 1) {
        const digit = digits[shape.at(row, column)];
        cells.push(digit ? this.puzzle.symbols[digit - 1] : digit === undefined ? "–" : "·");
      }
      rows.push(el("li", {}, cells.join(" ")));
    }
    this.words.querySelector("ol").replaceChildren(...rows);
  }

  reveal() {
    this.solved = !this.solved;
    this.solution.textContent = this.solved ? "Hide the solution" : "Show the solution";
    this.solution.setAttribute("aria-pressed", String(this.solved));
    this.show(this.at);
  }

  key(event) {
    if (event.altKey || event.ctrlKey || event.metaKey || this.row.verdict !== "unique") return;
    if (event.target.matches("input, select, textarea")) return;
    const act = { ArrowRight: () => this.step(1), ArrowLeft: () => this.step(-1), Home: () => this.to(0),
      End: () => this.to(this.walk.last) }[event.key];
    if (act) {
      event.preventDefault();
      act();
    }
  }

  broken() {
    const { pair, proposals } = this.puzzle;
    const figures = [];
    const figure = (view, label) => el("figure", {},
      el("div", { class: "paper" }, this.boards.draw(this.puzzle, view, `${this.row.title}. ${label}`)), el("figcaption", {}, label));
    if (pair) {
      const differ = pair[0].flatMap((digit, cell) => (digit === pair[1][cell] ? [] : [cell]));
      const number = `differs in ${counted(differ.length, "cell")}, marked`;
      figures.push(figure({ digits: pair[0], bold: true, differ }, `One solution; the other ${number}`),
        figure({ digits: pair[1], bold: true, differ }, "Another solution"));
    } else figures.push(figure({ digits: this.puzzle.digits }, "The puzzle as given"));
    return el("div", { class: "stage pair" },
      el("p", { class: "remark", role: "note" }, el("strong", {}, `To mend: ${UNPROVEN[this.row.verdict]}. `), this.puzzle.remark), figures,
      proposals.length ? el("ul", { class: "cures", "aria-label": "What would mend it" }, proposals.map((one) => el("li", {}, one))) : "");
  }

  facts() {
    const { row, puzzle } = this;
    const terms = [];
    const fact = (term, ...values) => {
      const said = values.flat().filter(Boolean);
      if (said.length) terms.push(el("dt", {}, term), said.map((value) => el("dd", {}, value)));
    };
    const { by, on, note } = puzzle.consent;
    fact("Rules", puzzle.rules);
    fact("Note", row.note);
    if (row.verdict === "unique") {
      fact("Verdict", row.disputed ? "one solution, which differs from the setter’s own" : "one solution",
        row.reached ? "" : "the ladder of techniques does not finish it");
      fact("Hardest step", row.hardest);
      fact("Sticking points", puzzle.narrowings.map(({ step, words }) =>
        el("a", { href: `#/${row.id}/${step}` }, `Step ${step}: ${words}`)));
    }
    fact("Notes", puzzle.notes);
    fact("Permission", [row.permission === "none" ? "none recorded" : row.permission, by && `by ${by}`, on].filter(Boolean).join(", "), row.printed, note);
    fact("Look-alikes", row.alike.map((id) => el("a", { href: `#/${id}` }, id)));
    fact("Printed in", row.books);
    fact("Tags", row.tags.join(", "));
    fact("Source", row.source);
    fact("Private note", row.private);
    fact("Link", puzzle.link);
    fact("Where", `${row.file}, line ${row.line} (${row.id})`);
    return el("dl", { class: "facts" }, terms);
  }
}
