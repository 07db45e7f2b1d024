# SPDX-License-Identifier: GPL-3.0-or-later
"""The whole job by keyboard alone: whole_job.py PROGRAM; with --mouse, by mouse alone but for the values themselves; with
--reader, from the gap pass on, by what the items offer over AT-SPI, without a key or a place on the screen.

From an empty record of a three-main engine to the signed-off sheet, through all eight stations, in the built program on
a real screen. What to type is decided by what the program asks for, as a person does: the name of the field or button that
has the keyboard, read over AT-SPI. The way is the program's own, Ctrl+Enter. Every key is counted, each of a chord for
itself. The first thing that is wrong ends it with a sentence. With CAPRAIL_PICTURES=folder a picture of each station is
kept there.
"""
import json
import os
import re
import sqlite3
import subprocess
import sys
from pathlib import Path

from at_spi import fail, picture
from person import Mouse, Person, Reader

MOST_KEYS = 1800
ONE_AT_A_TIME = 0.6  # seconds: the same word twice within half a second is asked back
MOST_TIMES = 4  # that the same is asked for: a shim's readings, a place before and after its stack
SCRATCH = Path(os.environ["SCRATCH"])
RECORD = SCRATCH / "job.caprail"
HERE = Path(__file__).parent

# The engine as it is; the program is told what instruments read of it.
GAPS = {"1 left": 50, "1 right": 52, "2 left": 54, "2 right": 57, "3 left": 48, "3 right": 55}
# A thick one and a thin one for each place, and one of each more to tell a stack's two neighbours by.
KIT = [("6 x 30 thou", 6), ("1 x 18 thou", 1), ("1 x 20 thou", 1), ("1 x 22 thou", 1), ("1 x 24 thou", 1),
       ("1 x 25 thou", 1), ("1 x 27 thou", 1)]
SHIMS = [".03"] * 6 + [".018", ".02", ".022", ".024", ".025", ".027"]
INSTRUMENTS = [
    ("MIC-1", "micrometer", {"Limit of error ±": "0.0001"}),
    ("BORE-1", "bore gauge", {"Limit of error ±": "0.0001", "Set with": "MIC-1"}),
    ("LEAVES", "feeler", {"Limit of error ±": "0.0002"}),
    ("EDGE", "straightedge", {"Limit of error ±": "0.0001"}),
    ("DIAL", "dial", {"Limit of error ±": "0.0002"}),
    ("DEPTH", "depth", {"Limit of error ±": "0.001"}),
    ("WR", "torque", {"Wrench from": "1", "Wrench up to": "100"}),
]

# The same as words of the ledger.
TYPES = {"micrometer": "micrometer", "bore gauge": "bore gauge", "feeler": "feeler gauge", "straightedge": "straightedge",
         "dial": "dial indicator", "depth": "depth gauge", "torque": "torque wrench"}
FIELDS = {"Limit of error ±": "limit_of_error_typed", "Set with": "set_with", "Wrench from": "smallest_torque_typed",
          "Wrench up to": "largest_torque_typed"}


def entries():
    """How many are on the disk."""
    with sqlite3.connect(f"file:{RECORD}?mode=ro", uri=True, timeout=5) as file:
        return file.execute("SELECT count(*) FROM entry").fetchone()[0]


def shown(program):
    answer = subprocess.run([program, "show", RECORD, "--json"], check=True, timeout=60, capture_output=True).stdout
    return json.loads(answer)


def begin(program):
    """The record, from a template of the shop's own."""
    templates = SCRATCH / "caprail" / "caprail" / "templates"
    templates.mkdir(parents=True)
    (templates / "Three mains.jsonl").write_bytes((HERE / "three-mains.jsonl").read_bytes())
    subprocess.run([program, "new", RECORD, "--template", "Three mains", "--person", "Mira Solheim", "--engine",
                    "3.0 inline three", "--customer", "Teo Brandt", "--serial", "KL-2231"],
                   check=True, timeout=60, capture_output=True)


def instruments(person):
    person.press("ctrl+1")
    person.pump(0.3)
    person.to_people()
    for name, kind, fields in INSTRUMENTS:
        before = entries()
        person.press("alt+w")
        person.wait_for_name("^Name$")
        person.type(name, enter=False)
        person.choose("micrometer", kind)
        for field, value in fields.items():
            person.go_to(field)
            person.type(value, enter=False)
        person.press("Return")
        person.wait(f"the instrument {name}", lambda: entries() > before)
    picture("1-engine")


def measured(program):
    """What was done before the gap pass, as entries: caps and rods at torque, journals, bores, the crank in, the kit."""
    lines = [{"kind": "instrument_added", "instrument": name, "type": TYPES[kind],
              **{FIELDS[field]: value for field, value in fields.items()}} for name, kind, fields in INSTRUMENTS]
    places = [(kind, number) for kind, count in (("main", 3), ("rod", 2)) for number in range(1, count + 1)]
    for kind, number in places:
        lines += [{"kind": "fastener_tightened", "fastener": f"{kind}-{number}{side}", "instrument": "WR",
                   "torque_typed": "70 lbf·ft" if kind == "main" else "45 lbf·ft"} for side in "LR"]
    # Twice over all of them: how well a reading repeats must be known.
    for _ in range(2):
        for kind, number in places:
            journal, bore = ("2.4480", "2.4501") if kind == "main" else ("2.0990", "2.1011")
            lines += [{"kind": "journal_reading", "journal": f"{kind}-{number}", "station": station, "direction": direction,
                       "diameter_typed": journal, "instrument": "MIC-1"} for station in (1, 2) for direction in (1, 2)]
            lines += [{"kind": "bore_reading", "journal": f"{kind}-{number}", "station": station, "value_typed": bore,
                       "method": "bore with shells", "instrument": "BORE-1"} for station in (1, 2)]
    lines.append({"kind": "crank_laid_in", "is_in": 1})
    lines += [{"kind": "fit_reading", "fit": "crank end play", "place": 1, "value_typed": "0.0060", "instrument": "DIAL"}] * 2
    lines += [{"kind": "shim_added", "shim": f"S{number:03}", "marked_typed": size, "bag": ""}
              for number, size in enumerate(SHIMS, 1)]
    lines += [{"kind": "shim_measured", "shim": f"S{number:03}", "thickness_typed": size, "instrument": "MIC-1"}
              for number, size in enumerate(SHIMS, 1) for _ in range(2)]
    text = "\n".join(json.dumps({"person": "Mira Solheim", **line}) for line in lines)
    answer = subprocess.run([program, "append", RECORD, "-"], input=text, text=True, timeout=60, capture_output=True, check=False)
    if answer.returncode != 0:
        fail(f"what comes before the gap pass is refused: {answer.stderr}")


def tighten(person):
    """The main caps and the rods, to what is specified: Enter alone."""
    person.press("ctrl+3")
    person.into("Main ")
    person.wait_for_name("^Main .* brought to")
    for number in range(6 + 4):
        if number == 6:
            person.choose("Main caps", "R")
            person.wait_for_name("^Rod .* brought to")
        before = entries()
        person.press("Return")
        person.wait(f"fastener {number + 1} at torque", lambda: entries() > before)
        person.pump(0.1)
    picture("3-fasteners")


def kit(person):
    """The shims, and what the micrometer says of each, at the page that the program led to."""
    for number, (line, count) in enumerate(KIT):
        before = entries()
        person.type(line)
        person.wait(f"the shims of «{line}»", lambda: entries() == before + count)
    person.press("alt+2")
    person.wait_for_name("^Measure S001, reading 1")
    for number in range(2 * len(SHIMS)):
        shim = int(person.wait_for_name(r"^Measure S(\d+), reading \d")[1])
        before = entries()
        person.type(SHIMS[shim - 1])
        person.wait(f"reading {number + 1} of the kit, of shim {shim}", lambda: entries() > before)
        person.pump(0.1)


# What a person answers to what is asked, by the name of what has the keyboard.
ANSWERS = [
    (r"brought to \(Enter alone", lambda m: ""),
    (r"^Journal main", lambda m: "2.4480"),
    (r"^Journal rod", lambda m: "2.0990"),
    (r"^Bore.* main|^Main.*bore", lambda m: "2.4501"),
    (r"^Bore.* rod", lambda m: "2.1011"),
    (r"^Crank end play", lambda m: "0.0060"),
    (r"^Recheck at .*: R rocks", "d"),
    (r"^Girdle lies like this", "Return"),
    (r"^Turning torque, (before|girdle)", lambda m: "11/8"),
    (r"^Turning torque", lambda m: "12/8"),
    (r"clear|^Two turns|^Keyway", lambda m: "p"),
    (r"nut.*Enter", lambda m: ""),
    (r"^Pan depth", lambda m: "7.411"),
    (r"^Compressed gasket", lambda m: ".063"),
    (r"^Girdle plate", lambda m: ".25"),
    (r"^Pickup below", lambda m: "7.417"),
    (r"^Take off|^Begin verify", "Return"),
    (r"^Round \d+: ", lambda m: "h"),
    (r"^In the stacks", lambda m: "12+0+0"),
    (r"^Product / lot", lambda m: "Grey sealant / 7-A / 20"),
    (r"^Brought to|^Enter when it is", lambda m: ""),
    (r"^To start it", lambda m: "11.5/8"),
    (r"signs? off|[Ss]tatement", lambda m: "Closed on the stand."),
    (r"^Gap at cap (\d \w+)", lambda m: f"{GAPS[m[1]]} thou"),
]


# The stations that are shown when something at them is asked.
PICTURES = {"Turning torque, before": "5-trial-fit", "Girdle plate, reading 2": "6-pickup", "Round 1": "3-verify-round",
            "Product": "7-closing"}
# Fields of a round and of closing, which keep their name from place to place.
SAME_NAME = r"Round|In the stacks|Product|Brought to|Enter when|To start"


def work(person, program):
    """Answers what is asked; where that is nothing new, goes to the next thing to do."""
    answered = None
    times = {}
    while True:
        role, name, description = person.asked()
        print(f"{person.keys} keys, {entries()} entries: {role} «{name}» {description}", file=sys.stderr, flush=True)
        # At the end of a round over the places the last is read once more: how well it repeats must be known.
        is_once_more = re.match("Journal|Bore", name) and times.get(name) == 1
        if role in ("list", "combo box") or name == "drags" or re.match("Begin verify round [^1]", name) or re.search(r", reading 3", name):
            answered = name  # nothing more is to be typed here
        if name == answered and not is_once_more:
            answered = None
            if name.startswith("Bore"):
                before = entries()
                person.press("alt+i")
                person.wait("the crank laid in", lambda: entries() > before)
                picture("2-bearings")
            person.press("ctrl+Return")
            person.pump(0.3)
            continue
        if name.startswith("Add shims"):
            kit(person)
            person.press("ctrl+Return")
            person.wait_for_name("^Stack built at")
            continue
        if name.startswith("Stack built at"):
            before = entries()
            person.press("alt+u")
            person.wait("the plan taken over", lambda: entries() > before)
            person.pump(0.3)
            picture("4-girdle")
            person.press("ctrl+Return")
            person.pump(0.3)
            continue
        if shot := PICTURES.get(next((start for start in PICTURES if name.startswith(start)), None)):
            picture(shot)
        answer = next(((m, give) for pattern, give in ANSWERS if (m := re.search(pattern, name))), None)
        if person.keys > MOST_KEYS:
            fail(f"not done with {MOST_KEYS} keys")
        if answer is None:
            fail(f"nobody knows what to answer to a {role} «{name}» ({description})")
        if isinstance(answer[1], str):
            before = entries()
            person.press(answer[1])
            person.wait(f"«{name}» answered with {answer[1]}", lambda: entries() > before)
            person.pump(ONE_AT_A_TIME)
            answered = name
            continue
        times[name] = times.get(name, 0) + 1
        if times[name] > (24 if re.match(SAME_NAME, name) else MOST_TIMES):
            fail(f"«{name}» is asked for again and again")
        before = entries()
        given = answer[1](answer[0])
        person.type(given, enter=False)
        if given == "h":
            person.pump(ONE_AT_A_TIME)  # the letter alone may say it
        if entries() == before:
            person.press("Return")
        person.wait(f"«{name}» stored", lambda: entries() > before)
        person.pump(ONE_AT_A_TIME if given == "" else 0.1)
        if "Closed" in given:
            return
        answered = None if re.match(SAME_NAME, name) else name


def make_sheet(person):
    """What the customer gets, under the name that the dialog proposes; and a last look at the ledger."""
    person.press("ctrl+shift+p")
    person.wait("the dialog for the sheet's name", lambda: person.asked()[1].startswith("File name"))
    person.press("Return")
    person.wait("the sheet", lambda: any(file.stat().st_size > 10000 for file in SCRATCH.glob("*.pdf")), 30)
    person.press("ctrl+8")
    person.pump(1)
    picture("8-history")


def main():
    program = sys.argv[1]
    by_reader = "--reader" in sys.argv
    begin(program)
    if by_reader:
        measured(program)
    person = Reader() if by_reader else Mouse() if "--mouse" in sys.argv else Person()
    with subprocess.Popen([program, RECORD], stdout=subprocess.DEVNULL) as shown_program:
        try:
            # Without a window manager nothing else gives a window the keyboard.
            subprocess.run(["xdotool", "search", "--sync", "--onlyvisible", "--name", "Caprail", "windowfocus"],
                           check=True, timeout=60)
            person.wait("a field", lambda: person.asked()[0], 30)
            if not by_reader:
                instruments(person)
                tighten(person)
            person.press("ctrl+Return")
            person.pump(0.3)
            work(person, program)
            if not by_reader:
                make_sheet(person)
        finally:
            # Not asked to close: where something is typed and not stored, it would ask back, and nobody is there.
            shown_program.kill()
    if not shown(program)["closed"]:
        fail("the record does not end closed")
    if subprocess.run([program, "check", RECORD], timeout=60, capture_output=True, check=False).returncode != 0:
        fail("the record is not sound")
    if person.keys >= MOST_KEYS:
        fail(f"{person.keys} keys; at most {MOST_KEYS - 1} are meant")
    clicks = f"{person.clicks} clicks" if isinstance(person, Mouse) else "no click"
    if by_reader:
        print(f"{entries()} entries with {person.clicks} actions of items, no key and no place on the screen, signed off")
        return
    print(f"{entries()} entries with {person.keys} keys and {clicks}, signed off")


main()
