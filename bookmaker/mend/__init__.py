"""From a puzzle with a slip to its cures, each tried exactly, the likeliest first."""
