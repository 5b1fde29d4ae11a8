"""The room `ink`."""
