"""The live page: it follows a spec file as it is saved."""

from rodwright.jobs.look.session import Reading, Served, look

__all__ = ["Reading", "Served", "look"]
