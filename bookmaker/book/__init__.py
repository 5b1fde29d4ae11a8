"""The room `book`."""
