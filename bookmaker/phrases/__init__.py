"""Words for reasons: the only room that turns steps into sentences, one folder of messages for each language.

In: a reason, and the grid it speaks of. Out: a sentence. Sentences are whole messages in Fluent files (`en/*.ftl`), so
that rewording touches nothing else and a further language is a further folder; code chooses a message and fills it in.
"""

from bookmaker.phrases.phrasebook import Phrasebook

__all__ = ["Phrasebook"]
