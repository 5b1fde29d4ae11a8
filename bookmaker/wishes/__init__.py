"""What somebody wishes a puzzle to be: read from a file, and held against a puzzle with its grade."""
