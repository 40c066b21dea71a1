"""The built site, a server for it on this machine only, and a browser to look at it with."""

import os
import shutil
import threading
import time
from collections.abc import Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, Request, sync_playwright

from jobcards.pages import build

# Headless, and without the errands that Chromium runs of its own accord.
BROWSER_ARGUMENTS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
AT_HOME = ("http://127.0.0.1:", "file://", "data:", "blob:", "about:")


class Quiet(SimpleHTTPRequestHandler):
    """Serves files without telling of each."""

    def log_message(self, format: str, *args: Any) -> None:  # noqa: ANN401 - the library's own
        pass


@pytest.fixture(scope="session")
def site(tmp_path_factory: pytest.TempPathFactory, worker_id: str) -> Path:
    """The whole site, built once: by the first of several test processes that asks, while the others wait for it."""
    if worker_id == "master":
        return built(tmp_path_factory.mktemp("built"))
    shared = tmp_path_factory.getbasetemp().parent / "built"
    try:
        shared.mkdir()
    except FileExistsError:
        return built_by_another(shared)
    try:
        return built(shared)
    finally:
        (shared / "over").touch()


def built(folder: Path) -> Path:
    """The whole site, in a folder."""
    build.build_site(folder / "site")
    (folder / "whole").touch()
    return folder / "site"


def built_by_another(folder: Path) -> Path:
    """The site once another process has built it."""
    while not (folder / "over").exists():
        time.sleep(0.2)
    if not (folder / "whole").exists():
        pytest.fail("the site could not be built; another process tells why")
    return folder / "site"


@pytest.fixture(scope="session")
def served(site: Path) -> Iterator[str]:
    """The address at which the built site is served, without a slash at the end."""
    server = ThreadingHTTPServer(("127.0.0.1", 0), partial(Quiet, directory=str(site)))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    yield f"http://127.0.0.1:{server.server_port}"
    server.shutdown()
    server.server_close()


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Chromium; without one the test is left out, except where all must run (CI)."""
    chromium = os.environ.get("JOBCARDS_BROWSER") or shutil.which("chromium") or shutil.which("chromium-browser")
    if not chromium:
        reason = "no Chromium here; install the package chromium"
        if os.environ.get("CI") == "true":
            pytest.fail(reason)
        pytest.skip(reason)
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=chromium, headless=True, args=BROWSER_ARGUMENTS)
        yield running
        running.close()


@pytest.fixture
def page(browser: Browser) -> Iterator[Page]:
    """A fresh window. The test fails when a page asks for anything from outside this machine."""
    outside: list[str] = []
    context = browser.new_context()
    window = context.new_page()

    def note(request: Request) -> None:
        if not request.url.startswith(AT_HOME):
            outside.append(request.url)

    window.on("request", note)
    yield window
    context.close()
    assert not outside, f"fetched from outside: {outside}"
