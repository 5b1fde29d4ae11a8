"""A book and a layout → pages of display items. All measuring and breaking happens here."""

from bookmaker.layout.compose import compose, compose_key
from bookmaker.layout.setting.ready import make_ready
from bookmaker.layout.sheets.cover import compose_cover, thin_spine
from bookmaker.layout.sheets.crib import compose_crib
from bookmaker.layout.sheets.fillable import fillable
from bookmaker.layout.sheets.handout import KeyPlace, Occasion, compose_handout, compose_key_sheet, compose_marker
from bookmaker.layout.sheets.imposition import impose
from bookmaker.layout.sheets.press import press_sheets
from bookmaker.layout.spec import Layout
from bookmaker.layout.specfile import layout_names, load_layout
from bookmaker.layout.theme import Theme
from bookmaker.layout.themefile import load_theme, theme_names

__all__ = [
    "KeyPlace",
    "Layout",
    "Occasion",
    "Theme",
    "compose",
    "compose_cover",
    "compose_crib",
    "compose_handout",
    "compose_key",
    "compose_key_sheet",
    "compose_marker",
    "fillable",
    "impose",
    "layout_names",
    "load_layout",
    "load_theme",
    "make_ready",
    "press_sheets",
    "theme_names",
    "thin_spine",
]
