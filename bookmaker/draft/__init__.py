"""From a wish to puzzles: drawn at random from a seed, then improved until the wish is met."""
