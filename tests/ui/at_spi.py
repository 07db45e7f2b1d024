# SPDX-License-Identifier: GPL-3.0-or-later
"""What the tests that work in the running program over AT-SPI share: looking at items, waiting, acting, failing."""
import os
import shutil
import subprocess
import sys
import time
from pathlib import Path

import pyatspi
from gi.repository import GLib


def picture(name):
    """Of the whole screen, where CAPRAIL_PICTURES names a folder."""
    folder = os.environ.get("CAPRAIL_PICTURES")
    by = "".join(argument.replace("--", "-by-") for argument in sys.argv if argument.startswith("--"))
    if folder and shutil.which("import"):  # of imagemagick
        Path(folder).mkdir(parents=True, exist_ok=True)
        program = Path(sys.argv[0]).stem.replace("_", "-")
        subprocess.run(["import", "-window", "root", f"{folder}/{program}{by}-{name}.png"], check=False, timeout=20)


def fail(sentence):
    picture("failed")
    sys.exit(f"{Path(sys.argv[0]).stem}: {sentence}")


def pump(seconds=0.0):
    """Lets the bus deliver, for so long at least."""
    end = time.monotonic() + seconds
    while True:
        while GLib.MainContext.default().iteration(False):
            pass
        if time.monotonic() >= end:
            return
        time.sleep(0.005)


def wait_for(what, find, seconds=20, at_last=None):
    """What `find` gives as soon as it gives something; a sentence when it does not in time."""
    end = time.monotonic() + seconds
    while True:
        try:
            if found := find():
                return found
        except GLib.GError:  # an item that went away while it was asked
            pass
        if time.monotonic() > end:
            fail(f"{what}: not within {seconds} s" + (f"; {at_last()}" if at_last else ""))
        pump(0.03)


def has(item, state):
    return item.getState().contains(state)


def all_below(parent):
    """Every item under this one that is on the screen, in order. Cells of a hidden list call themselves visible."""
    for item in parent:
        if item is not None and has(item, pyatspi.STATE_SHOWING):
            yield item
            yield from all_below(item)


def first(parent, test):
    return next((item for item in all_below(parent) if test(item)), None)


def act(item, *names):
    """Does the first of these actions that the item offers."""
    try:
        action = item.queryAction()
    except NotImplementedError:
        fail(f"«{item.name}» offers no action")
    offered = [action.getName(i) for i in range(action.nActions)]
    wanted = next((name for name in names if name in offered), None)
    if wanted is None:
        fail(f"«{item.name}» does not offer {' or '.join(names)}, only {offered}")
    action.doAction(offered.index(wanted))
    pump(0.1)
