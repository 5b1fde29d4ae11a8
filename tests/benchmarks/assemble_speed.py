"""How long it takes to choose a collection, and how much memory: `python tests/benchmarks/assemble_speed.py`.

Catalogues are drawn from a seed, with setters of very different diligence, tags, dates, permissions and a history, as
archives have them; the puzzles themselves do not matter once they are proved. Each brief has twelve demands and is
solved to proven optimality by HiGHS. `--other` solves the same programs by OR-Tools CP-SAT as well (two workers), each
objective in turn, and compares the values of all objectives. Goals: 60 of 5,000 in under 10 s, 200 of 100,000 in under
60 s, under 500 MB. All seconds are processor time.
"""

from __future__ import annotations

import argparse
import resource
import sys
import tempfile
from pathlib import Path
from random import Random
from time import process_time

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.archive import Card, Catalogue
from bookmaker.archive.cards import NO_KEYS
from bookmaker.assemble import Assembled, assemble
from bookmaker.assemble.brief import make_plan, open_brief
from bookmaker.assemble.optimiser import solve
from bookmaker.assemble.plan import Plan
from bookmaker.assemble.program import model_of
from bookmaker.grade.bands import FAMILIES
from bookmaker.rules import kinds
from bookmaker.source.diagnostics import Collector
from bookmaker.symmetry import Keys
from tests.assemble.other import solve_by_cp_sat

SETTERS = 40
TAGS = ("harbour", "easter", "storm", "beginners", "lighthouse", "ferry")

BRIEF = """
brief:
  title: Bench
  puzzles: {puzzles}
  bands: {{Stroll: {a}, Ramble: {b}, Hike: {c}, Climb: {d}, Summit: at most {e}}}
  each-setter: {{at-most: {f}}}
  kinds: {{thermometer: at least {b}, cage: {a} to {c}, arrow: at least 3}}
  tags: {{harbour: at least {c}, easter: none}}
  permission: [granted, own]
  unprinted: yes
  shown: before 2026
  curve: rising
  prefer: [closest to the curve, longest not shown, most setters]
"""


def catalogue(count: int, seed: int = 1) -> Catalogue:
    """A catalogue of cards that could be real."""
    rng = Random(seed)
    words = list(kinds())
    weights = [1 / (rank + 1) for rank in range(SETTERS)]
    cards, history = [], {}
    for number in range(count):
        picked = tuple(sorted(rng.sample(words, rng.choice((0, 1, 1, 1, 2)))))
        family = rng.choice(FAMILIES) if picked else "classic"
        band = rng.choices((1, 2, 3, 4, 5), (3, 4, 4, 3, 2))[0]
        keys = Keys(f"{seed}-{number}", "", "")
        if rng.random() < 0.2:
            history[keys.puzzle] = ("An older book",)
        shown = f"{rng.randint(2015, 2026)}-{rng.randint(1, 12):02}" if rng.random() < 0.7 else ""
        cards.append(
            Card(
                id=f"p{number}",
                file=f"part-{number // 100}.yaml",
                line=1 + 20 * (number % 100),
                column=7,
                setter=f"Setter {rng.choices(range(SETTERS), weights)[0]}",
                shown=shown,
                tags=tuple(tag for tag in TAGS if rng.random() < 0.15),
                state=rng.choices(("granted", "own", "asked", "none"), (6, 2, 1, 1))[0],
                kinds=picked,
                family=family,
                difficulty=band + rng.random(),
                keys=keys if count else NO_KEYS,
            )
        )
    return Catalogue(tuple(cards), (Path("archive"),), history)


def plan_for(found: Catalogue, puzzles: int) -> Plan:
    """The brief with its amounts in proportion."""
    share = puzzles / 20
    amounts = {"a": round(3 * share), "b": round(5 * share), "c": round(6 * share), "d": round(4 * share)}
    text = BRIEF.format(puzzles=puzzles, e=round(2 * share), f=max(round(share * 2), 2), **amounts)
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "brief.yaml"
        file.write_text(text, encoding="utf-8")
        collector = Collector()
        opened = open_brief(file, collector)
        plan = opened and make_plan(opened, found, lambda books: frozenset(), collector)
    if not plan:
        sys.exit("\n".join(str(diagnostic) for diagnostic in collector.found))
    return plan


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--other", action="store_true", help="also by CP-SAT")
    parser.add_argument("--sizes", default="60:5000,200:100000", help="puzzles:archive, with commas between")
    for pair in parser.parse_args().sizes.split(","):
        puzzles, count = map(int, pair.split(":"))
        found = catalogue(count)
        began = process_time()
        plan = plan_for(found, puzzles)
        made = assemble(plan, lambda choice: 0)
        took = process_time() - began
        told = (
            "a clash" if not isinstance(made, Assembled) else "proven best" if not made.choice.slack else "not proven"
        )
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
        print(f"{puzzles} of {count}, {len(plan.demands)} demands: {took:.1f} s, {told}, {peak:.0f} MB", flush=True)
        if parser.parse_args().other:
            program = model_of(plan).program
            began = process_time()
            ours = solve(program)
            between = process_time()
            theirs = solve_by_cp_sat(program, seconds=600)
            ratio = (process_time() - between) / (between - began)
            same = "the same" if ours and ours.reached == theirs else f"DIFFERENT: {ours and ours.reached} and {theirs}"
            print(f"  CP-SAT: {same} optimum by every objective, in {ratio:.1f} times the time", flush=True)


if __name__ == "__main__":
    main()
