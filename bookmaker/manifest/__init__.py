"""The room `manifest`."""
