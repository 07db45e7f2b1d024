// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/start_page.h>

#include <QCommandLinkButton>
#include <QFileInfo>
#include <QVBoxLayout>
#include <session/filled.h>
#include <tables/table.h>
#include <text/label.h>
#include <window/preferences.h>
#include <window/samples.h>

namespace caprail {

namespace {

/// A file of the lists: what stands there is read once, when the page is made.
struct ListedFile {
    QString path;
    QString words;
};

} // namespace

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
    auto* title = new Label(tr("Caprail"));
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 2.2);
    large.setBold(true);
    title->setFont(large);
    auto* purpose =
        new Label(tr("The assembly build record of one engine per file: bearing clearances, fastener torques, the shim "
                     "stacks under the girdle, trial fit and pickup depth — with what is no longer valid, and why, "
                     "before anything is closed up."));
    purpose->setWordWrap(true);

    auto* make =
        new QCommandLinkButton(tr("&New record"), tr("for an engine on the stand, from a template or by hand"));
    auto* open = new QCommandLinkButton(tr("&Open a record"), tr("a .caprail file; or drop one on this window"));
    auto* shop = new QCommandLinkButton(tr("&Shop"), tr("all records of a folder: searched, sorted, compared"));
    auto* manual = new QCommandLinkButton(tr("Man&ual"), tr("the whole job, station by station; F1 opens it anywhere"));
    connect(make, &QAbstractButton::clicked, this, &StartPage::newRequested);
    connect(open, &QAbstractButton::clicked, this, &StartPage::openRequested);
    connect(shop, &QAbstractButton::clicked, this, &StartPage::shopRequested);
    connect(manual, &QAbstractButton::clicked, this, &StartPage::manualRequested);

    auto* column = new QVBoxLayout;
    column->addWidget(title);
    column->addWidget(purpose);
    column->addSpacing(12);
    column->addWidget(make);
    column->addWidget(open);
    column->addWidget(shop);
    column->addWidget(manual);
    const auto addList = [&](const QString& head, const QStringList& files, auto signal) {
        if (files.isEmpty()) {
            return;
        }
        auto* label = new Label(head);
        auto* list = new List<ListedFile, QString>(QString(head).remove(QLatin1Char('&')), &ListedFile::path,
                                                   {{.text = [](const ListedFile& file) { return file.words; },
                                                     .tip = [](const ListedFile& file) { return file.path; }}},
                                                   this);
        label->setBuddy(list);
        std::vector<ListedFile> rows;
        for (const QString& file : files) {
            rows.push_back(
                {file, joined({QFileInfo(file).completeBaseName(), whoseRecord(file)}, QStringLiteral("   ·   "))});
        }
        list->put(std::move(rows));
        list->setMaximumHeight((list->fontMetrics().lineSpacing() + 8) * std::min(5, static_cast<int>(files.size())) +
                               8);
        const auto choose = [this, list, signal](int line) {
            if (const ListedFile* file = list->at(line)) {
                (this->*signal)(QString(file->path)); // a copy: the page may go with its list
            }
        };
        connect(list, &ListView::lineActivated, this, choose);
        connect(list, &QListView::clicked, this, [choose](const QModelIndex& index) { choose(index.row()); });
        column->addSpacing(8);
        column->addWidget(label);
        column->addWidget(list);
    };
    addList(tr("&Recent records"), recentFiles(), &StartPage::fileChosen);
    addList(tr("&Sample records (opened as a copy)"), sampleFiles(), &StartPage::sampleChosen);
    auto* caution = new Label(tr(
        "The part maker's instructions, local codes and licensed practice come first; nothing here overrides them."));
    caution->setWordWrap(true);
    column->addStretch(1);
    column->addWidget(caution);

    auto* middle = new QWidget;
    middle->setLayout(column);
    middle->setMaximumWidth(fontMetrics().averageCharWidth() * 100);
    auto* row = new QHBoxLayout(this);
    row->addStretch(1);
    row->addWidget(middle, 6);
    row->addStretch(1);
}

} // namespace caprail
