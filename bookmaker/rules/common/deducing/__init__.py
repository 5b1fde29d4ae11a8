"""Tools with which rule kinds deduce: enumeration, sums, bounds, automata."""
