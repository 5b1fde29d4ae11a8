"""Grid geometry, cell names and the puzzle as pure data."""
