"""The maker's own rack: read, shown, started, and changed by what a plan takes out of it."""

from rodwright.jobs.rack.reading import RackFile, parse_rack, read_rack
from rodwright.jobs.rack.starting import new_rack
from rodwright.jobs.rack.taking import Taken, take_from_rack

__all__ = ["RackFile", "Taken", "new_rack", "parse_rack", "read_rack", "take_from_rack"]
