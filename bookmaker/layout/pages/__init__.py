"""The pages of a book, one file a part; each makes leaves, which `compose` numbers and puts on sheets."""
