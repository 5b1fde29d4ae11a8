"""What is drawn rather than set: grids, samples of marks, ridges, profiles, codes."""
