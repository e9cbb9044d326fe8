"""The live page: it follows a spec file as it is saved."""

from rodwright.jobs.look.serving import look

__all__ = ["look"]
