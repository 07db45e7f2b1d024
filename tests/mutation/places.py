# SPDX-License-Identifier: GPL-3.0-or-later
"""Where core/ can be changed by one token or one statement, found in clang's syntax tree so that each change means something."""
import collections
import concurrent.futures
import hashlib
import json
import os
import pathlib
import re
import subprocess
import sys

from clang import cindex

TOP = pathlib.Path(__file__).resolve().parents[2]
WORK = TOP / "build" / "mutation"
CK = cindex.CursorKind
COMPARED = {"<": "<=", "<=": "<", ">": ">=", ">=": ">", "==": "!=", "!=": "==", "&&": "||", "||": "&&"}
COUNTED = {"+": "-", "-": "+"}
# What only tells a search when to give up, or memory how much will be asked for: no answer depends on it.
SEARCHES = ("core/shims/solver/", "core/shims/plan/", "core/bearings/shell_", "core/packing/")
ABOUT_TIME = re.compile(r"clock|deadline|grace|\bstop\b", re.I)
NO_MATTER = re.compile(r"\.(reserve|shrink_to_fit)\(|\bassert\(|//|#")


class Mutant:
    def __init__(self, sort, path, line, begin, end, text, was):
        self.sort, self.path, self.line, self.begin, self.end = sort, path, line, begin, end
        self.text, self.was = text, was
        self.number = 0

    def replacement(self):
        """On one line, and then as many line ends as before: a compiler's complaint names the line of this tree."""
        return " ".join(self.text.replace("@N@", str(self.number)).splitlines()) + "\n" * self.was.count("\n")

    def shown(self):
        return " ".join(self.was.split())

    def where(self):
        return f"{self.path}:{self.line}"


def compile_arguments():
    """The flags of each source of core/, from a compile database made without unity builds."""
    database = WORK / "database"
    subprocess.run(["cmake", "-S", str(TOP), "-B", str(database), "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Debug",
                    "-DCAPRAIL_UI=OFF", "-DCAPRAIL_BENCH=OFF"], check=True, stdout=subprocess.DEVNULL)
    resources = subprocess.run(["clang", "-print-resource-dir"], capture_output=True, text=True, check=True).stdout.strip()
    flags = {}
    for entry in json.loads((database / "compile_commands.json").read_text()):
        path = os.path.relpath(entry["file"], TOP)
        if not path.startswith("core/"):
            continue
        words = entry["command"].split()
        keep, take = [], False
        for word in words[1:]:
            if take or word in ("-I", "-isystem", "-D") or word.startswith(("-I", "-D", "-std", "-isystem")):
                keep.append(word)
            take = not take and word in ("-I", "-isystem", "-D")
        flags[path] = keep + ["-resource-dir", resources]
    return flags


class Finder:
    """Walks the tree of one source and notes what can be changed in its functions."""

    def __init__(self, path, source):
        self.path, self.source, self.found = path, source, []
        self.lines = source.decode().splitlines()

    def text_of(self, cursor):
        return self.source[cursor.extent.start.offset:cursor.extent.end.offset].decode(errors="replace")

    def add(self, sort, cursor, new):
        was, line = self.text_of(cursor), self.lines[cursor.extent.start.line - 1]
        if NO_MATTER.search(was) or (self.path.startswith(SEARCHES) and ABOUT_TIME.search(was + line)):
            return
        if sort == "number" and NO_MATTER.search(line):
            return
        begin, end = cursor.extent.start.offset, cursor.extent.end.offset
        if "\ufffd" not in new:
            self.found.append(Mutant(sort, self.path, cursor.extent.start.line, begin, end, new, was))

    def operator(self, cursor):
        children = list(cursor.get_children())
        if len(children) != 2:
            return
        left, right = children
        between = self.source[left.extent.end.offset:right.extent.start.offset].decode(errors="replace").strip()
        other = (COMPARED | COUNTED).get(between)
        if other:
            l, r = self.text_of(left), self.text_of(right)
            sort = "comparison or logic" if between in COMPARED else "plus and minus"
            self.add(sort, cursor, f"(mutant_(@N@) ? ({l} {other} {r}) : ({l} {between} {r}))")

    def statements(self, block):
        for child in block.get_children():
            text = self.text_of(child)
            is_call = child.kind in (CK.CALL_EXPR, CK.COMPOUND_ASSIGNMENT_OPERATOR, CK.UNARY_OPERATOR) or (
                child.kind == CK.UNEXPOSED_EXPR and text.endswith(")"))
            if is_call and self.source[child.extent.end.offset:child.extent.end.offset + 1] == b";" and "co_" not in text:
                self.add("statement", child, f"if (!mutant_(@N@)) {text}")

    def note(self, cursor):
        file = cursor.extent.start.file
        if file is None or file.name != str(TOP / self.path):
            return  # out of a macro of some header
        kind, text = cursor.kind, self.text_of(cursor)
        if kind == CK.BINARY_OPERATOR:
            self.operator(cursor)
        elif kind == CK.IF_STMT:
            first = next(cursor.get_children(), None)
            if first is not None and first.kind.is_expression():
                self.add("condition", first, f"(mutant_(@N@) != static_cast<bool>({self.text_of(first)}))")
        elif kind == CK.CXX_BOOL_LITERAL_EXPR and text in ("true", "false"):
            self.add("value", cursor, f"({text} != mutant_(@N@))")
        elif kind == CK.INTEGER_LITERAL and re.fullmatch(r"[0-9']+(LL|L|UL|U)?", text):
            self.add("number", cursor, f"(mutant_(@N@) ? {text} + 1 : {text})")
        elif kind == CK.COMPOUND_STMT:
            self.statements(cursor)

    def walk(self, cursor, in_function):
        kind, children = cursor.kind, list(cursor.get_children())
        start = cursor.extent.start.offset
        if kind in (CK.FUNCTION_DECL, CK.CXX_METHOD, CK.CONSTRUCTOR, CK.LAMBDA_EXPR, CK.CONVERSION_FUNCTION):
            in_function = True
            if re.match(rb"(static |inline )*(constexpr|consteval)\b", self.source[start:start + 200]):
                return
        elif kind == CK.CASE_STMT:
            children = children[1:]
        elif kind == CK.VAR_DECL and b"constexpr" in self.source[max(0, start - 10):start + 60]:
            return
        elif kind in (CK.FUNCTION_TEMPLATE, CK.CLASS_TEMPLATE, CK.STATIC_ASSERT, CK.ENUM_DECL):
            return
        if in_function:
            self.note(cursor)
        for child in children:
            self.walk(child, in_function)


def candidates_of(paths, arguments):
    """The places of sources that are compiled alike, read as one so that their headers are read once. They are
    remembered in build/mutation as long as neither the sources nor this script change."""
    sources = {path: (TOP / path).read_bytes() for path in paths}
    key = hashlib.sha256(" ".join(arguments).encode() + pathlib.Path(__file__).read_bytes())
    for path in paths:
        key.update(path.encode() + b"\0" + sources[path])
    kept = WORK / "places" / key.hexdigest()
    if kept.exists():
        return [Mutant(*values) for values in json.loads(kept.read_text())]
    joined = "".join(f'#include "{TOP / path}"\n' for path in paths)
    unit = cindex.Index.create().parse("joined.cpp", args=arguments, unsaved_files=[("joined.cpp", joined)])
    wrong = [d for d in unit.diagnostics if d.severity >= cindex.Diagnostic.Error]
    if wrong:
        sys.exit(f"{wrong[0].location.file}:{wrong[0].location.line}: not read ({wrong[0].spelling})")
    finders = {str(TOP / path): Finder(path, sources[path]) for path in paths}
    for cursor in unit.cursor.get_children():
        finder = finders.get(cursor.location.file.name) if cursor.location.file else None
        if finder:
            finder.walk(cursor, False)
    found = [mutant for finder in finders.values() for mutant in finder.found]
    kept.parent.mkdir(parents=True, exist_ok=True)
    kept.write_text(json.dumps([[m.sort, m.path, m.line, m.begin, m.end, m.text, m.was] for m in found]))
    return found


def all_candidates(flags, jobs):
    alike = collections.defaultdict(list)
    for path in sorted(flags):
        alike[tuple(flags[path])].append(path)
    with concurrent.futures.ProcessPoolExecutor(jobs) as pool:
        found = pool.map(candidates_of, alike.values(), map(list, alike))
        return [mutant for some in found for mutant in some]


def draw(candidates, count, seed, others=()):
    """Evenly over the sorts, no two that overlap. A change elsewhere in core/ leaves the order of the rest as it is."""
    by_sort = collections.defaultdict(list)
    seen = collections.Counter()
    for mutant in candidates:
        same = (mutant.path, mutant.sort, mutant.was)
        seen[same] += 1
        chance = hashlib.sha256(repr((seed, same, seen[same])).encode()).digest()
        by_sort[mutant.sort].append((chance, mutant))
    for mutants in by_sort.values():
        mutants.sort(key=lambda one: one[0], reverse=True)
    drawn, taken = [], collections.defaultdict(list)
    for mutant in others:
        taken[mutant.path].append((mutant.begin, mutant.end))
    while len(drawn) < count and any(by_sort.values()):
        for sort in sorted(by_sort):
            while by_sort[sort] and len(drawn) < count:
                mutant = by_sort[sort].pop()[1]
                if all(mutant.end <= b or mutant.begin >= e for b, e in taken[mutant.path]):
                    taken[mutant.path].append((mutant.begin, mutant.end))
                    drawn.append(mutant)
                    break
    for number, mutant in enumerate(drawn, len(others) + 1):
        mutant.number = number
    return drawn
