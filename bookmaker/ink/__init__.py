"""Display items → PDF, SVG, PNG. Ink draws what it is given and decides nothing.

Only this room imports reportlab and pypdfium2. `content` (for `pdf`) and `svg` each hold one exhaustive match
over the items; `pixels` and `contact` draw finished PDF files once more, as pictures; `picture` picks a kind by a
file's name.
"""

import sys
from types import ModuleType

for _name in ("reportlab_mods", "reportlab_settings"):
    sys.modules.setdefault(_name, ModuleType(_name))
    """What reportlab would else run from files in the user's home: they would change what is printed, or stop it."""
