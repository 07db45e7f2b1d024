# SPDX-License-Identifier: GPL-3.0-or-later
"""Who works in the program on the screen: presses keys or clicks, and reads over AT-SPI what has the keyboard."""
import re
import subprocess
import time

import pyatspi
from gi.repository import GLib

from at_spi import act, all_below, fail, pump, wait_for


class Person:
    """Presses keys, and knows what has the keyboard."""

    def __init__(self):
        self.keys = 0
        self.item = None
        self.last = ""  # what was pressed to store last
        self.pressed = {}  # and when each such word was
        pyatspi.Registry.registerEventListener(self.heard, "object:state-changed:focused")

    def heard(self, event):
        # A list's current item says that it has the keyboard even while the list has not.
        if event.detail1 and event.source.getRole() not in (pyatspi.ROLE_LIST_ITEM, pyatspi.ROLE_TABLE_CELL):
            self.item = event.source

    def pump(self, seconds=0.0):
        pump(seconds)

    def asked(self):
        """Role, name and description of what has the keyboard now."""
        for _ in range(20):
            self.pump(0.02)
            try:
                return (self.item.getRoleName(), self.item.name, self.item.description) if self.item else ("", "", "")
            except GLib.GError:  # it went away while it was asked: the next is told of at once
                self.pump(0.05)
        return ("", "", "")

    def not_too_soon(self, word):
        """Nobody does the same thing twice within half a second: the program asks that back."""
        self.pump(max(0.0, self.pressed.get(word, 0.0) + 0.6 - time.monotonic()))
        self.last = word
        self.pressed[word] = time.monotonic()

    def press(self, *chords):
        for chord in chords:
            if chord == "Return" or len(chord) == 1:
                self.not_too_soon(chord)
            self.keys += len(chord.split("+"))
            subprocess.run(["xdotool", "key", chord], check=True)

    def type(self, text, enter=True):
        self.keys += len(text)
        if text and not any(c.isdigit() for c in text):
            self.not_too_soon(text)
        if text:
            subprocess.run(["xdotool", "type", "--delay", "4", "--", text], check=True)
        if enter:
            self.press("Return")

    def go_to(self, name):
        """With the Tab key, as far as the field of this name."""
        for _ in range(20):
            if self.asked()[1] == name:
                return
            self.press("Tab")
            self.pump(0.05)
        fail(f"the Tab key does not reach «{name}»")

    def into(self, name):
        """The field of the station that was gone to: it has the keyboard."""

    def to_people(self):
        self.press("ctrl+Tab", "ctrl+Tab")
        self.go_to("People")

    def choose(self, box, start):
        """In the box that shows this now, which is the next one, by the first letters."""
        self.press("Tab")
        self.wait_for_name(f"^{box}")
        self.type(start[:3], enter=False)

    def wait(self, what, test, seconds=10):
        """What the test gives as soon as it gives something."""
        found = wait_for(what, test, seconds, lambda: f"the keyboard is at {self.asked()}")
        self.pressed[self.last] = time.monotonic()  # the program has come so far only now
        return found

    def wait_for_name(self, pattern):
        return self.wait(f"«{pattern}» in focus", lambda: re.search(pattern, self.asked()[1]))


class Mouse(Person):
    """Clicks where the other presses keys; types what has to be typed: names and values."""

    # What is clicked instead of keys: its role, and how its name begins.
    TARGETS = {"ctrl+Return": ("push button", "Go there"), "ctrl+1": ("list item", "Engine"),
               "ctrl+3": ("list item", "Fasteners"), "ctrl+8": ("list item", "History"),
               "ctrl+Tab": ("page tab", "People and instruments"), "alt+w": ("push button", "New instrument"),
               "alt+2": ("page tab", "Shims"), "alt+i": ("push button", "Crank laid in"),
               "alt+u": ("push button", "Use the plan"), "d": ("push button", "drags")}

    def __init__(self):
        super().__init__()
        self.clicks = 0
        self.known = {}

    def find(self, role, start, parent=None):
        def search():
            roots = [parent] if parent is not None else [
                app for app in pyatspi.Registry.getDesktop(0) if app is not None and app.name == "caprail"]
            return next((item for root in roots for item in all_below(root)
                         if role in ("", item.getRoleName()) and item.name.startswith(start)), None)
        return self.wait(f"a {role} «{start}»", search, 20)

    def click(self, item):
        box = item.queryComponent().getExtents(pyatspi.DESKTOP_COORDS)
        self.clicks += 1
        subprocess.run(["xdotool", "mousemove", str(box.x + box.width // 2), str(box.y + box.height // 2), "click", "1"],
                       check=True)
        self.pump(0.1)

    def press(self, *chords):
        for chord in chords:
            if chord == "Return" or len(chord) == 1:
                self.not_too_soon(chord)
            if chord == "Return":
                self.enter()
            elif chord == "ctrl+shift+p":
                self.click(self.find("menu item", "File"))
                self.click(self.find("menu item", "Build sheet as PDF"))
            elif chord in self.TARGETS:
                if chord not in self.known or not self.known[chord].getState().contains(pyatspi.STATE_SHOWING):
                    self.known[chord] = self.find(*self.TARGETS[chord])
                self.click(self.known[chord])
            else:
                fail(f"nobody knows where to click for {chord}")

    def enter(self):
        """The button in focus, the sign in the field, or the button of the form."""
        role, name, _ = self.asked()
        if role == "push button":
            self.click(self.item)
        elif name in ("File name:", "File name"):
            self.click(self.find("push button", "Save"))
        elif any(child.getRoleName() == "push button" for child in self.item):
            self.click(next(child for child in self.item if child.getRoleName() == "push button"))
        else:
            self.click(self.find("push button", "Store instrument"))

    def into(self, name):
        """A click on a station leaves the keyboard in the list."""
        self.go_to(name)

    def to_people(self):
        self.press("ctrl+Tab")

    def go_to(self, name):
        self.click(self.find("text", name))

    def choose(self, box, start):
        self.click(self.find("combo box", box))
        self.click(self.find("list item", start))


class Reader(Mouse):
    """Neither presses a key nor points anywhere: what an item offers over AT-SPI is all there is, as for whoever works
    with a screen reader, with switches or by voice."""

    def click(self, item):
        self.clicks += 1
        act(item, "Press", "Toggle")

    def type(self, text, enter=True):
        if text and not any(c.isdigit() for c in text):
            self.not_too_soon(text)
        if text:
            self.item.queryEditableText().setTextContents(text)
        if enter:
            self.press("Return")
