"""Display items → PDF, SVG, PNG. Ink draws what it is given and decides nothing.

Only this room imports reportlab and pillow. `pdf`, `svg` and `png` each hold one exhaustive match over the items
(`pdf` in `content`); `picture` picks one by a file's name. `geometry` and `stroking` turn shapes into straight
stretches and strokes into areas, `raster` turns areas into pixels.
"""
