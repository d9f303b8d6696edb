"""What the disk and the machine allow at this moment: printed beside every figure that rests on them."""

from __future__ import annotations

import os
import time
from pathlib import Path
from statistics import median


def sync_ms(folder: Path, times: int = 50) -> float:
    """How long the disk takes to make 4 KB certain, in ms (median): the least that an answer takes."""
    handle = os.open(folder / "probe", os.O_WRONLY | os.O_CREAT, 0o600)
    taken = []
    for _ in range(times):
        begin = time.perf_counter()
        os.pwrite(handle, b"x" * 4096, 0)
        os.fdatasync(handle)
        taken.append(time.perf_counter() - begin)
    os.close(handle)
    return 1000 * median(taken)
