"""Tools with which rule kinds draw: the frame, room for marks, strokes, lanes."""
