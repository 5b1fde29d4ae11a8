"""Tools shared by the rule kinds: the contract, discovery, reading, drawing, wording."""
