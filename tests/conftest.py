"""What holds for all tests: proofs are not kept in the user's own cache folder."""

from __future__ import annotations

import pytest


@pytest.fixture(scope="session", autouse=True)
def _own_cache(tmp_path_factory: pytest.TempPathFactory) -> None:
    folder = tmp_path_factory.mktemp("cache")
    patch = pytest.MonkeyPatch()
    patch.setenv("BOOKMAKER_CACHE", str(folder))
