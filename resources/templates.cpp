// SPDX-License-Identifier: GPL-3.0-or-later
#include <resources/templates.h>

#include <QDir>
#include <QFile>

namespace caprail {

namespace {

const QString folder = QStringLiteral(":/caprail/templates/");
const QString ending = QStringLiteral(".jsonl");

} // namespace

QStringList templateTitles() {
    QStringList titles;
    for (const QString& file : QDir(folder).entryList({QStringLiteral("*") + ending}, QDir::Files, QDir::Name)) {
        titles << file.chopped(ending.size());
    }
    return titles;
}

QByteArray templateLines(const QString& title) {
    QFile file(folder + title + ending);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace caprail
