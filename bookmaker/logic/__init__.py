"""What a person can deduce: the state of a board, singles, techniques, and what-ifs followed in rounds."""
