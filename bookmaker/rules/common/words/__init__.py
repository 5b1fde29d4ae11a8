"""Tools with which rule kinds speak: wording for the eye, speech for the ear."""
