"""A club's own times: what they say of a book's puzzles and of their grades, and a calibration that carries it over.

In: a table of who solved what in how many minutes, and the proofs of a book. Out: how hard the puzzles were for the
club, on the scale on which they are graded; how well the two agree; a calibration for later grades.
"""

from bookmaker.times.assessment import Assessment, Measured, assess
from bookmaker.times.calibration import (
    Calibration,
    calibrated,
    calibrated_catalogue,
    calibrated_proof,
    calibration_text,
    read_calibration,
)
from bookmaker.times.results import Results, read_results

__all__ = [
    "Assessment",
    "Calibration",
    "Measured",
    "Results",
    "assess",
    "calibrated",
    "calibrated_catalogue",
    "calibrated_proof",
    "calibration_text",
    "read_calibration",
    "read_results",
]
