"""Source text with places: mistakes and how they are shown, YAML that knows where it was typed, cells and grids."""
