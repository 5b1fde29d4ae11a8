"""Elements of HTML, and documents of them as text: written as XML they are XHTML.

In: tags, texts, attributes. Out: elements; text in which everything is escaped. Names are written without namespaces;
the document says at its root which they are.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import TypeAlias
from xml.etree.ElementTree import Element, tostring

Content: TypeAlias = Element | str | None

XHTML = "http://www.w3.org/1999/xhtml"
OPS = "http://www.idpf.org/2007/ops"
"""Of the attribute `epub:type`."""

_NOT_IN_XML = re.compile(r"[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
"""Characters that no XML document may hold (XML 1.0, production 2)."""


def element(tag: str, *contents: Content | Iterable[Content], **attributes: str) -> Element:
    """An element with texts and elements in it; None is left out. A name such as `class_` or `aria_label` is that of
    the attribute with a hyphen for each underscore, none at the end; `epub_type` is `epub:type`."""
    made = Element(tag)
    for name, value in attributes.items():
        name = "epub:type" if name == "epub_type" else name.rstrip("_").replace("_", "-")
        made.set(name, allowed(value))
    for content in contents:
        for piece in (content,) if isinstance(content, Element | str) or content is None else content:
            add(made, piece)
    return made


def add(parent: Element, content: Content) -> None:
    """Put a text or an element behind what an element holds."""
    if isinstance(content, Element):
        parent.append(content)
    elif content:
        content = allowed(content)
        if len(parent):
            parent[-1].tail = (parent[-1].tail or "") + content
        else:
            parent.text = (parent.text or "") + content


def unseen(text: str) -> Element:
    """Words for those who listen, where the others see."""
    return element("span", text, class_="unseen")


def xhtml(head: Iterable[Element], body: Element, language: str) -> bytes:
    """A document of an e-book."""
    root = element("html", element("head", head), body, xmlns=XHTML, lang=language)
    root.set("xmlns:epub", OPS)
    root.set("xml:lang", language)
    return xml(root, "<!DOCTYPE html>\n")


def html(head: Iterable[Element], body: Element, language: str) -> bytes:
    """A web page."""
    root = element("html", element("head", head), body, lang=language)
    return f"<!DOCTYPE html>\n{tostring(root, 'unicode', 'html')}\n".encode()


def xml(root: Element, doctype: str = "") -> bytes:
    """Any XML document."""
    return f'<?xml version="1.0" encoding="UTF-8"?>\n{doctype}{tostring(root, "unicode")}\n'.encode()


def allowed(text: str) -> str:
    """The text without characters that XML has no place for."""
    return _NOT_IN_XML.sub("", text)
