// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/database_notice.h>

#include <QHBoxLayout>
#include <QPushButton>
#include <ledger/qt_text.h>
#include <session/filled.h>
#include <session/look.h>

namespace caprail {

namespace {

constexpr int patience = 500; ///< milliseconds

} // namespace

DatabaseNotice::DatabaseNotice(DatabaseLink& link, QWidget* parent)
    : QWidget(parent), m_link(&link), m_words(new Label), m_again(new QPushButton(tr("Try &again"))) {
    setObjectName(QStringLiteral("databaseNotice"));
    m_words->setWordWrap(true);
    m_again->setObjectName(QStringLiteral("tryAgain"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 6, 8, 6);
    row->addWidget(m_words, 1);
    row->addWidget(m_again);
    hide();
    m_patience.setSingleShot(true);
    m_patience.setInterval(patience);
    connect(&link, &DatabaseLink::asking, &m_patience, qOverload<>(&QTimer::start));
    connect(&link, &DatabaseLink::rested, this, [this] {
        m_patience.stop();
        sayLast();
    });
    connect(&m_patience, &QTimer::timeout, this,
            [this] { say(filled(tr("Waiting for %1…"), qtText(m_link->place().shownAs)), false); });
    connect(m_again, &QPushButton::clicked, this, [this] {
        clear();
        emit triedAgain();
    });
}

void DatabaseNotice::fail(const QString& question, const QString& sentence) {
    std::erase_if(m_failed, [&](const auto& one) { return one.first == question; });
    m_failed.emplace_back(question, sentence);
    sayLast();
}

void DatabaseNotice::answer(const QString& question) {
    std::erase_if(m_failed, [&](const auto& one) { return one.first == question; });
    sayLast();
}

void DatabaseNotice::clear() {
    m_failed.clear();
    hide();
}

void DatabaseNotice::sayLast() {
    if (m_failed.empty()) {
        hide();
    } else {
        say(m_failed.back().second, true);
    }
}

void DatabaseNotice::say(const QString& sentence, bool isFailure) {
    m_words->setText((isFailure ? QStringLiteral("⚑ ") : QStringLiteral("… ")) + sentence);
    m_again->setVisible(isFailure);
    const Look look = screenLook();
    QPalette palette = this->palette();
    palette.setColor(QPalette::Window, washed(isFailure ? look.close : look.accent, look.paper, 0.14));
    palette.setColor(QPalette::WindowText, look.ink);
    setPalette(palette);
    setAutoFillBackground(true);
    setVisible(true);
}

} // namespace caprail
