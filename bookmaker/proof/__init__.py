"""The room `proof`."""
