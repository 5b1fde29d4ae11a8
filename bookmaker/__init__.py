"""bookmaker: proofs, grades and prints books of number-placement puzzles."""
