"""Workbooks reckoned anew by LibreOffice, which isn't ours."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest
from openpyxl import load_workbook

WITHOUT_OFFICE = pytest.mark.skipif(
    shutil.which("soffice") is None, reason="LibreOffice Calc isn't installed"
)


def reckoned(file: Path, folder: Path) -> Any:
    """The workbook of a file with the figures that its formulas come to; ``folder`` is for what
    LibreOffice writes."""
    profile = f"-env:UserInstallation={(folder / 'profile').as_uri()}"
    form = ["--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", str(folder / "reckoned")]
    subprocess.run(
        ["soffice", profile, "--headless", *form, str(file)], check=True, capture_output=True
    )
    return load_workbook(folder / "reckoned" / file.name, data_only=True)
