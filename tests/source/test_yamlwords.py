"""The phrases of the YAML parser that are matched: it still says each of them."""

from __future__ import annotations

import pytest
import yaml
from yaml.error import MarkedYAMLError

from bookmaker.source.yamlwords import Phrase

SAID_OF = {
    Phrase.LIST: "a: [one two: [three",
    Phrase.TABLE: "a: {b: 1",
    Phrase.COMMA: "a: [one",
    Phrase.FILE_END: "a: [",
    Phrase.DASH: "a: b\nc: - d",
    Phrase.ALIAS: "a: *",
    Phrase.ANCHOR: "a: & b",
    Phrase.TAG: "a: !<",
    Phrase.DIRECTIVE: "%YAML 1\n---\na: b",
    Phrase.BLOCK: "a: |x\n  b",
    Phrase.NO_TOKEN: "a: `b`",
    Phrase.BUT_FOUND: "a: 'b' c",
    Phrase.NOT_HERE: "a: b: c",
    Phrase.UNKNOWN_ESCAPE: 'a: "\\q"',
    Phrase.ESCAPE: 'a: "\\xzz"',
    Phrase.COLON: "a: b: c",
    Phrase.NO_COLON: "a: b\nc\nd: e",
    Phrase.QUOTES: "a: 'b",
    Phrase.DOCUMENT_START: "a: b\n%c",
    Phrase.BLOCK_END: "a: 'b' c",
}


@pytest.mark.parametrize("phrase", Phrase)
def test_the_parser_still_says_it(phrase: Phrase) -> None:
    with pytest.raises(MarkedYAMLError) as raised:
        yaml.compose(SAID_OF[phrase], yaml.SafeLoader)
    said = f"{raised.value.context or ''} {raised.value.problem or ''}"
    assert phrase in said, f"PyYAML {yaml.__version__} says “{said}” where {phrase!r} was expected: see yamlwords.py"
