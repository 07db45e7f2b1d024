# SPDX-License-Identifier: GPL-3.0-or-later
"""Works in the running program over AT-SPI alone, as a screen reader does: accessibility_live.py PROGRAM RECORD.

At every station it asks each item that can have the focus for its role, its name and what it is for. It reads the gaps
off the diagram and compares them with what the command line says of the same file. It chooses a place, types a value
into the field, enters it, and looks for it in the ledger on the disk. It goes on with the Tab key. The first thing that
is wrong ends it with a sentence.
"""
import json
import os
import shutil
import subprocess
import sys
import tempfile
import time
from decimal import ROUND_HALF_UP, Decimal
from pathlib import Path

import pyatspi
from gi.repository import GLib

from at_spi import act, all_below, fail, first, has, pump, wait_for

STATIONS = ["Engine", "Bearings", "Fasteners", "Girdle", "Trial fit", "Pickup", "Closing", "History"]
# What says nothing of what can be done with an item.
EMPTY_ROLES = {pyatspi.ROLE_UNKNOWN, pyatspi.ROLE_INVALID, pyatspi.ROLE_FILLER, pyatspi.ROLE_REDUNDANT_OBJECT}
NM_PER_THOU = 25400
MOST_TOLD = 25  # changes of names and descriptions for one entry, typing included
TAB = 0xFF09  # its key symbol in X11 (keysymdef.h)
CONTROL_CODE = 37  # the left Control key's code on every X server with evdev's key codes, as Xvfb's


def press(key, control=False):
    """A key, by way of the accessibility service as an on-screen keyboard does."""
    if control:
        pyatspi.Registry.generateKeyboardEvent(CONTROL_CODE, None, pyatspi.KEY_PRESS)
    pyatspi.Registry.generateKeyboardEvent(key, None, pyatspi.KEY_SYM)
    if control:
        pyatspi.Registry.generateKeyboardEvent(CONTROL_CODE, None, pyatspi.KEY_RELEASE)
    pump(0.1)


def click(item):
    """Without a window manager nothing else gives a window the keyboard."""
    box = item.queryComponent().getExtents(pyatspi.DESKTOP_COORDS)
    pyatspi.Registry.generateMouseEvent(box.x + box.width // 2, box.y + box.height // 2, "b1c")
    pump(0.2)


def in_focus(window):
    """The widget in focus; a list's current item says that it is in focus even while the list is not."""
    return first(window, lambda i: has(i, pyatspi.STATE_FOCUSED)
                 and i.getRole() not in (pyatspi.ROLE_LIST_ITEM, pyatspi.ROLE_TABLE_CELL))


def heard_while(do, wanted, seconds=10):
    """What is announced as focused or selected while this is done, until an item of the wanted words is."""
    names = []

    def note(event):
        if not event.type.startswith("object:state-changed") or event.detail1:
            item = event.any_data if hasattr(event.any_data, "name") else event.source
            names.append(item.name)

    kinds = ("object:state-changed:focused", "object:state-changed:selected", "object:selection-changed",
             "object:active-descendant-changed")
    pyatspi.Registry.registerEventListener(note, *kinds)
    do()
    end = time.monotonic() + seconds
    while time.monotonic() < end and not any(wanted in name for name in names):
        pump(0.05)
    pyatspi.Registry.deregisterEventListener(note, *kinds)
    return names


def told_while(do, until):
    """The items whose name or description is told to be another while this is done, with that, until the test holds."""
    told = []

    def note(event):
        is_name = "accessible-name" in event.type
        told.append((event.source, "name" if is_name else "description", event.source.name if is_name else event.source.description))

    kinds = ("object:property-change:accessible-name", "object:property-change:accessible-description")
    pyatspi.Registry.registerEventListener(note, *kinds)
    do()
    wait_for("what is told of it", lambda: until(told))
    pump(0.5)
    pyatspi.Registry.deregisterEventListener(note, *kinds)
    return told


def purpose(item):
    """What an item is for, besides what stands in it: a box's name is what is chosen in it."""
    labels = [r.getTarget(i).name for r in item.getRelationSet()
              if r.getRelationType() == pyatspi.RELATION_LABELLED_BY for i in range(r.getNTargets())]
    return " ".join(labels) or item.description


def ask_every_item(window, station):
    """The number of items that can have the focus; each has a role, a name and, where that is its value, a purpose."""
    count = 0
    for item in all_below(window):
        if not has(item, pyatspi.STATE_FOCUSABLE):
            continue
        role = item.getRole()
        box = item.queryComponent().getExtents(pyatspi.WINDOW_COORDS)
        around = (f"a {item.getRoleName()} in «{item.parent.name or item.parent.getRoleName()}» at {station}, "
                  f"{box.width} × {box.height} at {box.x}, {box.y},")
        if role in EMPTY_ROLES:
            fail(f"{around} has no role")
        # Cells and labels are read by their content, which may be empty.
        if role not in (pyatspi.ROLE_TABLE_CELL, pyatspi.ROLE_LABEL) and not item.name.strip():
            fail(f"{around} has no name")
        if role == pyatspi.ROLE_COMBO_BOX and not purpose(item).strip():
            fail(f"{around} says only what is chosen in it, «{item.name}», not what it is for")
        count += 1
    return count


def the_plan(window):
    return first(window, lambda i: i.getRole() == pyatspi.ROLE_LIST and i.name == "Plan of the pan rail")


def place_on(window, words):
    plan = the_plan(window)
    return None if plan is None else next((i for i in plan if i.name.startswith(words)), None)


def gap_field(window, words):
    return first(window, lambda i: i.getRole() == pyatspi.ROLE_TEXT and i.name.startswith(f"Gap at {words}"))


def content(item):
    text = item.queryText()
    return text.getText(0, text.characterCount)


def type_and_enter(window, words, typed):
    """Puts this into the field of a place and presses the Enter that stands in the field."""
    field = wait_for(f"the field for {words}", lambda: gap_field(window, words))
    for state in (pyatspi.STATE_FOCUSABLE, pyatspi.STATE_EDITABLE, pyatspi.STATE_ENABLED):
        if not has(field, state):
            fail(f"the field «{field.name}» is not {pyatspi.stateToString(state)}")
    act(field, "SetFocus")
    field.queryEditableText().setTextContents(typed)
    wait_for(f"«{typed}» in the field", lambda: content(field) == typed or None)
    echo = field.description
    act(wait_for("an Enter in the field", lambda: first(field, lambda i: i.getRole() == pyatspi.ROLE_PUSH_BUTTON)), "Press")
    return field, echo


def ledger_of(program, record):
    """The entries on the disk, as the command line reads them."""
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "ledger.jsonl"
        subprocess.run([program, "export", record, "--ledger", out], check=True, timeout=30, capture_output=True)
        return [json.loads(line) for line in out.read_text(encoding="utf-8").splitlines()]


def work(program, record, shown):
    desktop = pyatspi.Registry.getDesktop(0)

    def application():
        if shown.poll() is not None:
            fail(f"the program ended with {shown.returncode}")
        return next((a for a in desktop if a is not None and a.name == "caprail"), None)

    app = wait_for("the program on the bus", application, 30)
    window = wait_for("its window", lambda: next((w for w in app if w is not None and "record" in w.name), None))
    click(wait_for("the list of stations", lambda: first(window, lambda i: i.name.startswith("Engine (Ctrl+1)"))))
    wait_for("the window's turn at the keyboard", lambda: has(window, pyatspi.STATE_ACTIVE) or None)

    items = 0
    for number, station in enumerate(STATIONS, 1):
        press(ord("0") + number, control=True)
        wait_for(f"{station} chosen with Ctrl+{number}",
                 lambda: first(window, lambda i: i.name.startswith(station) and f"(Ctrl+{number})" in i.name
                               and has(i, pyatspi.STATE_SELECTED)))
        items += ask_every_item(window, station)
    if items < 200:
        fail(f"only {items} items of {len(STATIONS)} stations can have the focus")

    press(ord("4"), control=True)
    wait_for("the diagram at Girdle", lambda: the_plan(window))
    answer = subprocess.run([program, "show", record, "--json"], check=True, timeout=30, capture_output=True).stdout
    read = 0
    for code, position in json.loads(answer)["positions"].items():
        words = f"cap {code[:-1]} {'left' if code[-1] == 'L' else 'right'}"
        place = wait_for(f"{words} on the diagram", lambda: place_on(window, words), 5)
        if position["gap_nm"] is not None:
            inches = Decimal(position["gap_nm"]) / NM_PER_THOU / 1000
            figure = f"gap {inches.quantize(Decimal('0.0001'), ROUND_HALF_UP)} in"
            if figure not in place.name.split(", "):
                fail(f"at {words} there is a {figure} in the file, and «{place.name}» is read out")
            read += 1
    if read < 5:
        fail(f"only {read} gaps of the record could be compared")

    before = len(ledger_of(program, record))
    place = place_on(window, "cap 4 left")
    press(ord("4"), control=True)
    act(wait_for("cap 3 right", lambda: place_on(window, "cap 3 right")), "Press")
    heard = heard_while(lambda: act(place, "Press"), "cap 4 left")
    if not any("cap 4 left" in name for name in heard):
        fail(f"cap 4 left, chosen on the diagram, is not announced; heard: {heard}")

    field, _ = type_and_enter(window, "cap 4 left", "9")
    wait_for("at the field, the sentence that refuses a bare 9,", lambda: "9 thousandths" in field.description or None)
    if content(field) != "9" or len(ledger_of(program, record)) != before:
        fail("9 alone, which may be nine thousandths or nine inches, was not kept in the field for another try")
    pump(0.7)  # nobody does the same thing twice within half a second: the program asks that back
    told_while(lambda: type_and_enter(window, "cap 4 left", "9"),
               lambda told: any("9 thousandths" in words for _, _, words in told))  # fails when it is not told again
    pump(0.7)
    stored = []
    told = told_while(lambda: stored.append(type_and_enter(window, "cap 4 left", "28+27.5 thou")),
                      lambda told: any(words.startswith("On disk") for _, _, words in told))
    _, echo = stored[0]
    live = [words for _, _, words in told if words.startswith("On disk")]
    if len(live) != 1 or "cap 4 left" not in live[0] or "Next: Gap at cap" not in live[0]:
        fail(f"an entry and what comes next are not told as one sentence, but as {live}")
    hidden = [f"{kind} of {item.getRoleName()} «{words}»" for item, kind, words in told
              if not has(item, pyatspi.STATE_SHOWING)]
    if hidden:
        fail(f"what is not shown tells of itself: {hidden}")
    if len(told) > MOST_TOLD:
        fail(f"one entry makes {len(told)} tellings: {[words for _, _, words in told]}")
    if "0.0555 in" not in echo or "1.410 mm" not in echo:
        fail(f"what was read of 28+27.5 thou is described as «{echo}»")
    entry = wait_for("the entry on the disk", lambda: next(iter(ledger_of(program, record)[before:]), None))
    wanted = {"kind": "gap_reading", "position": "4L", "gap_nm": 55_500 * NM_PER_THOU // 1000,
              "gap_typed": "28+27.5 thou"}
    if {key: entry.get(key) for key in wanted} != wanted:
        fail(f"entered was {wanted}, on the disk is {entry}")

    act(wait_for("a field for the next place", lambda: first(
        window, lambda i: i.getRole() == pyatspi.ROLE_TEXT and i.name.startswith("Gap at cap"))), "SetFocus")
    way = []
    for _ in range(12):
        now = wait_for("an item in focus", lambda: in_focus(window), 5)
        way.append(f"{now.getRoleName()} «{now.name}»")
        press(TAB)
    if any(a == b for a, b in zip(way, way[1:])) or len(set(way)) < 8:
        fail(f"the Tab key does not go on: {' > '.join(way)}")
    print(f"one entry makes {len(told)} tellings, none of what is hidden")
    print(f"{items} items of {len(STATIONS)} stations asked, {read} gaps read out, entry {entry['sequence']} made, "
          f"{len(set(way))} items on the way of the Tab key")


def main():
    program, sample = sys.argv[1:3]
    record = os.path.join(os.environ["SCRATCH"], "record.caprail")
    shutil.copyfile(sample, record)
    with subprocess.Popen([program, record], stdout=subprocess.DEVNULL) as shown:
        try:
            work(program, record, shown)
        except GLib.GError as error:
            fail(f"the program does not answer: {error.message}")
        except subprocess.SubprocessError as error:
            fail(f"the command line failed: {error}")
        finally:
            shown.terminate()
            try:
                shown.wait(10)
            except subprocess.TimeoutExpired:
                shown.kill()
    if subprocess.run([program, "check", record], timeout=30, capture_output=True, check=False).returncode != 0:
        fail("the record is not sound afterwards")


main()
