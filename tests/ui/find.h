// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// How a test finds what it looks at in a window: by the object names that the panels give (English, lowerCamelCase),
/// and in a table by line and column.
#include <QAbstractItemView>
#include <stdexcept>
#include <string>

namespace caprail {

/// The one child of a type and name, however deep; without a name, the one of that type. Throws a sentence, which ends
/// the test with it, where there is none or more than one.
template <class T> T* child(const QObject& parent, const char* name = "") {
    const QString wanted = QString::fromUtf8(name);
    const auto found = parent.findChildren<T*>(wanted);
    if (found.size() == 1) {
        return found.front();
    }
    std::string others;
    for (const T* other : parent.findChildren<T*>()) {
        const std::string otherName = other->objectName().toStdString();
        others += otherName.empty() || otherName.starts_with("qt_") ? "" : " “" + otherName + "”";
    }
    throw std::runtime_error(std::string(parent.metaObject()->className()) + " has " + std::to_string(found.size()) +
                             " children of type " + T::staticMetaObject.className() + " named “" + name +
                             "”, and a test looks for one. Names of that type:" + (others.empty() ? " none" : others));
}

template <class T> T* child(const QObject* parent, const char* name = "") {
    return child<T>(*parent, name);
}

/// What is shown in a cell.
inline QString cell(const QAbstractItemView* view, int line, int column = 0) {
    return view->model()->index(line, column).data().toString();
}
/// The line whose first cell is this; throws a sentence where there is none.
inline int lineOf(const QAbstractItemView* view, const QString& first) {
    for (int line = 0; line < view->model()->rowCount(); ++line) {
        if (cell(view, line) == first) {
            return line;
        }
    }
    throw std::runtime_error(view->accessibleName().toStdString() + " has no line “" + first.toStdString() + "”.");
}
inline int lines(const QAbstractItemView* view) {
    return view->model()->rowCount();
}

} // namespace caprail
