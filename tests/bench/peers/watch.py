"""Time that work took, less the time it stood in line for a processor that other programs had, as the bench measures its own."""

import time


def queued():
    """How long this thread has been ready to run and not running, s; Linux tells."""
    try:
        with open("/proc/thread-self/schedstat", encoding="ascii") as stat:
            return int(stat.read().split()[1]) / 1e9
    except OSError:
        return 0.0


class Watch:
    def __init__(self):
        self.queued = queued()
        self.start = time.perf_counter()

    def elapsed(self):
        took = time.perf_counter() - self.start
        return took - (queued() - self.queued)
