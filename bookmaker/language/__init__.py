"""Everything that is printed, in the reader's language: one folder of messages for each.

In: the name of a message and what it is filled in with. Out: text. Sentences are whole messages in Fluent files
(`en/*.ftl`), so that rewording touches nothing else and a further language is a further folder; code chooses a message
and fills it in. What the program itself says to whoever runs it is English and stands in the code.
"""

from bookmaker.language.arguments import Argument, Listed, Named, capital
from bookmaker.language.catalogues import FOLDERS, Catalogue, Manner, catalogue, spoken
from bookmaker.language.dates import date_said
from bookmaker.language.messages import PhraseFault

__all__ = [
    "FOLDERS",
    "Argument",
    "Catalogue",
    "Listed",
    "Manner",
    "Named",
    "PhraseFault",
    "capital",
    "catalogue",
    "date_said",
    "spoken",
]
