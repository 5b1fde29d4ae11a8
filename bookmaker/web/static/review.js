// The review page: a list of puzzles, or one of them open, as the address says: “#/”, “#/low-tide”, “#/low-tide/12”.

import { Boards } from "./board.js";
import { List } from "./list.js";
import { Sheet } from "./sheet.js";
import { detail, readIndex, unpack } from "./shelf.js";

const index = readIndex();
const boards = new Boards(index.measures, await unpack("grounds"));
const [shelf, place] = [document.getElementById("shelf"), document.getElementById("sheet")];
const list = new List(shelf, index, boards);
const title = document.title;
let open = null;
let left = 0;

async function follow() {
  const [, id = "", step = "0"] = location.hash.split("/").map((part) => decodeURIComponent(part));
  const row = index.puzzles.find((puzzle) => puzzle.id === id);
  if (!row) {
    const came = open?.row;
    open = null;
    place.hidden = true;
    document.body.classList.remove("reading");
    shelf.hidden = false;
    document.title = title;
    if (came) {
      window.scrollTo(0, left);
      list.list.querySelector(`[data-at="${came.at}"] a`)?.focus({ preventScroll: true });
    }
    return;
  }
  if (open?.row !== row) {
    if (!open) left = window.scrollY;
    const puzzle = await detail(row.at);
    const at = list.shown.indexOf(row);
    const neighbours = { before: at > 0 ? list.shown[at - 1] : null, after: at >= 0 ? list.shown[at + 1] : null };
    const go = (number) => history.replaceState(null, "", `#/${row.id}${number ? `/${number}` : ""}`);
    open = new Sheet(index, boards, row, puzzle, neighbours, go);
    place.replaceChildren(open.root);
    place.hidden = false;
    document.body.classList.add("reading");
    shelf.hidden = true;
    document.title = `${row.title}: ${title}`;
    window.scrollTo(0, 0);
    place.querySelector("h2").focus();
  }
  open.toStep(Number.parseInt(step, 10) || 0);
}

document.addEventListener("keydown", (event) => {
  if (event.key === "Escape" && open) location.hash = "#/";
});
window.addEventListener("hashchange", follow);
await follow();
document.documentElement.dataset.ready = "yes";
