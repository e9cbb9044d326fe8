"""The maker's own rack: read, shown, started, and changed by what a plan takes out of it."""

from rodwright.jobs.rack.reading import RackFile, parse_rack, read_rack

__all__ = ["RackFile", "parse_rack", "read_rack"]
