// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/key_list.h>

#include <QCoreApplication>

namespace caprail {

QString KeyTold::shownKeys() const {
    return QCoreApplication::translate("KeyList", keys);
}

QString KeyTold::shownUse() const {
    return QCoreApplication::translate("KeyList", use);
}

const std::vector<KeyTold>& keyList() {
    static const std::vector<KeyTold> list{
        {QT_TRANSLATE_NOOP("KeyList", "Enter"),
         QT_TRANSLATE_NOOP("KeyList", "stores what is typed and goes to the next place; presses the button in focus")},
        {QT_TRANSLATE_NOOP("KeyList", "Up, Down"), QT_TRANSLATE_NOOP("KeyList", "another place, from the value field")},
        {QT_TRANSLATE_NOOP("KeyList", "Ctrl+Enter"), QT_TRANSLATE_NOOP("KeyList", "to the next thing to do")},
        {QT_TRANSLATE_NOOP("KeyList", "Ctrl+1 to Ctrl+8"),
         QT_TRANSLATE_NOOP("KeyList", "the stations, in the order of the work")},
        {QT_TRANSLATE_NOOP("KeyList", "Alt+1, Alt+2, …"), QT_TRANSLATE_NOOP("KeyList", "the views of a station")},
        {QT_TRANSLATE_NOOP("KeyList", "Esc"),
         QT_TRANSLATE_NOOP("KeyList", "empties the field; once it is empty, leaves the bench view")},
        {QT_TRANSLATE_NOOP("KeyList", "! behind a value"),
         QT_TRANSLATE_NOOP("KeyList", "stores it though it was asked back; the record shows that")},
        {QT_TRANSLATE_NOOP("KeyList", "Ctrl+Z"), QT_TRANSLATE_NOOP("KeyList", "strikes the last entry, with a reason")},
        {QT_TRANSLATE_NOOP("KeyList", "Delete"),
         QT_TRANSLATE_NOOP("KeyList", "strikes the chosen entries of a list, with one reason")},
        {QT_TRANSLATE_NOOP("KeyList", "Ctrl+D"), QT_TRANSLATE_NOOP("KeyList", "opens a finding at the chosen place")},
        {QT_TRANSLATE_NOOP("KeyList", "Ctrl+Shift+A"), QT_TRANSLATE_NOOP("KeyList", "adds a photo there")},
        {QT_TRANSLATE_NOOP("KeyList", "Ctrl+F"), QT_TRANSLATE_NOOP("KeyList", "finds in the record")},
        {QT_TRANSLATE_NOOP("KeyList", "Ctrl+C"),
         QT_TRANSLATE_NOOP("KeyList", "copies the diagram, chart or table in focus; the menu key saves a drawing as SVG or PNG")},
        {QT_TRANSLATE_NOOP("KeyList", "Ctrl+U"), QT_TRANSLATE_NOOP("KeyList", "inch or millimetre, everywhere")},
        {QT_TRANSLATE_NOOP("KeyList", "F9"),
         QT_TRANSLATE_NOOP("KeyList", "bench view: one value at a time, to be read from afar")},
        {QT_TRANSLATE_NOOP("KeyList", "F1"), QT_TRANSLATE_NOOP("KeyList", "the manual, at the page of this station")},
        {QT_TRANSLATE_NOOP("KeyList", "Shift+F1"), QT_TRANSLATE_NOOP("KeyList", "the tour")},
        {QT_TRANSLATE_NOOP("KeyList", "Ctrl+Shift+P"), QT_TRANSLATE_NOOP("KeyList", "the build sheet as PDF")},
        {QT_TRANSLATE_NOOP("KeyList", "Ctrl+Shift+O"),
         QT_TRANSLATE_NOOP("KeyList", "the shop: the records of a folder")},
    };
    return list;
}

} // namespace caprail
