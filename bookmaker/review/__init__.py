"""What an editor wants to know of a puzzle besides its grade: symmetry, needless marks, slips, what is missing."""
