// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/disk_bar.h>

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QPushButton>
#include <QTimer>
#include <ledger/history_line.h>
#include <session/clock_notice.h>
#include <session/filled.h>
#include <session/look.h>
#include <session/now.h>
#include <store/file/path_text.h>
#include <store/file/writer_lock.h>
#include <text/ask.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <text/tab_order.h>
#include <window/main_window.h>

namespace caprail {

namespace {

constexpr int secondsBetweenLooks = 3;
constexpr std::size_t waitingShown = 3;

QPushButton* button(const QString& text, QWidget* parent) {
    auto* made = new QPushButton(text, parent);
    made->setMinimumHeight(made->fontMetrics().height() * 2); // reached with gloves on
    return made;
}

void colour(Label* label, const QColor& ink) {
    QPalette palette = label->palette();
    palette.setColor(QPalette::WindowText, ink);
    label->setForegroundRole(QPalette::WindowText);
    label->setPalette(palette);
}

} // namespace

DiskBar::DiskBar(MainWindow& window)
    : QToolBar(tr("Screen and disk"), &window), m_window(window), m_text(new Label(this)), m_waiting(new Label(this)),
      m_again(button(tr("&Try again"), this)), m_elsewhere(button(tr("Save a copy else&where…"), this)),
      m_hide(button(tr("&Understood"), this)), m_takeOver(button(tr("Ta&ke it over…"), this)),
      m_timer(new QTimer(this)) {
    setMovable(false);
    setObjectName(QStringLiteral("disk-bar"));
    setContextMenuPolicy(Qt::PreventContextMenu);
    toggleViewAction()->setVisible(false); // not to be switched off
    setTip(m_elsewhere, tr("Writes everything, what waits included, to another place and goes on there"));
    auto* page = m_page = new QWidget(this);
    page->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    auto* words = new QVBoxLayout;
    words->setSpacing(1);
    for (Label* label : {m_text, m_waiting}) {
        label->setWordWrap(true);
        label->setMinimumWidth(1);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        words->addWidget(label);
    }
    auto* row = new QHBoxLayout(page);
    row->setContentsMargins(12, 4, 12, 4);
    row->addLayout(words, 1);
    row->addWidget(m_again);
    row->addWidget(m_elsewhere);
    row->addWidget(m_takeOver);
    row->addWidget(m_hide);
    m_takeOver->setObjectName(QStringLiteral("takeOverRecord"));
    connect(m_takeOver, &QPushButton::clicked, this, &DiskBar::takeOver);
    orderAsRead(*page);
    addWidget(page);
    window.addToolBar(Qt::TopToolBarArea, this);
    hide();
    connect(m_again, &QPushButton::clicked, this, &DiskBar::tryAgain);
    connect(m_elsewhere, &QPushButton::clicked, this, &DiskBar::saveElsewhere);
    connect(m_hide, &QPushButton::clicked, this, [this] {
        m_readNotice = notice();
        refresh();
    });
    connect(m_timer, &QTimer::timeout, this, &DiskBar::look);
    m_timer->setInterval(secondsBetweenLooks * 1000);
    connect(&window, &MainWindow::recordChanged, this, &DiskBar::follow);
}

void DiskBar::follow() {
    m_readNotice.clear();
    RecordSession* const session = m_window.session();
    if (session != nullptr) {
        connect(session, &RecordSession::waiting, this, &DiskBar::refresh);
        connect(session, &RecordSession::fileLost, this, &DiskBar::refresh);
        connect(session, &RecordSession::fileFound, this, &DiskBar::refresh);
        connect(session, &RecordSession::lookedAround, this, &DiskBar::refresh);
        connect(session, &RecordSession::moved, this, &DiskBar::refresh);
        connect(session, &RecordSession::changed, this, &DiskBar::refresh);
        m_timer->start();
    } else {
        m_timer->stop();
    }
    refresh();
}

void DiskBar::look() {
    if (m_window.session() != nullptr) {
        m_window.session()->lookAround();
    }
}

QString DiskBar::notice() const {
    const RecordSession* const session = m_window.session();
    if (session == nullptr) {
        return {};
    }
    return joined({session->notice(), clockNotice(session->ledger(), now()),
                   session->isHeldElsewhere() ? session->readOnlyReason() : QString()},
                  QStringLiteral(" "));
}

void DiskBar::refresh() {
    RecordSession* const session = m_window.session();
    const std::size_t count = session == nullptr ? 0 : session->unstored().size();
    const QString lost = session == nullptr ? QString() : session->lostReason();
    const bool isTrouble = count != 0 || !lost.isEmpty();
    const QString all = notice();
    const QString said = all == m_readNotice ? QString() : all;
    setVisible(isTrouble || !said.isEmpty());
    m_again->setVisible(isTrouble);
    m_elsewhere->setVisible(isTrouble);
    m_hide->setVisible(!isTrouble);
    m_takeOver->setVisible(!isTrouble && session != nullptr && session->isHeldElsewhere());

    QStringList text;
    if (isTrouble) {
        text << (lost.isEmpty() ? session->waitingReason() : lost); // once, here: the bar below keeps silent
    }
    if (count != 0) {
        text << tr("Not on the disk: %1. What was entered is kept here, in order, until it is stored.").arg(count);
    }
    m_text->setText(isTrouble ? QStringLiteral("✕ ") + text.join(QLatin1Char(' ')) : said);
    QFont font = m_window.font();
    font.setBold(isTrouble);
    m_text->setFont(font);
    colour(m_text, isTrouble ? screenLook().out : screenLook().ink);
    colour(m_waiting, screenLook().ink);

    QStringList lines;
    for (std::size_t i = 0; i < count && i < waitingShown; ++i) {
        const Unstored& entry = session->unstored()[i];
        lines << QStringLiteral("•  ") + QString::fromStdString(historyLine(entry.body, session->units()));
    }
    if (count > waitingShown) {
        lines << tr("•  and more: %1").arg(count - waitingShown);
    }
    m_waiting->setText(lines.join(QStringLiteral("   ")));
    m_waiting->setVisible(count != 0);
    fit();
}

void DiskBar::resizeEvent(QResizeEvent* event) {
    QToolBar::resizeEvent(event);
    fit();
}

void DiskBar::fit() {
    constexpr int margins = 8;
    m_page->layout()->activate();
    const QLayout* const layout = m_page->layout();
    m_page->setFixedHeight(layout->hasHeightForWidth()
                               ? layout->heightForWidth(std::max(m_window.width() - margins, 200))
                               : layout->sizeHint().height());
}

void DiskBar::tryAgain() {
    m_window.session()->storeUnstored();
    look();
    refresh();
}

void DiskBar::takeOver() {
    const QString path = m_window.session()->path();
    const auto answer = ask(&m_window, tr("Take the record over"),
                            tr("Where it is open now nothing more can be entered then, and what is typed there and not "
                               "stored is lost. Take it over only when nobody works there. Take it over?"),
                            QMessageBox::Yes | QMessageBox::Cancel, QMessageBox::Cancel);
    if (answer != QMessageBox::Yes) {
        return;
    }
    if (const auto taken = takeLockOver(pathBytes(path)); !taken) {
        warn(&m_window, tr("Take the record over"), QString::fromStdString(taken.error().sentence));
        return;
    }
    auto read = RecordSession::read(path);
    if (!read) {
        warn(&m_window, tr("Take the record over"), QString::fromStdString(read.error().sentence));
        return;
    }
    m_window.take(std::make_unique<RecordSession>(std::move(*read)));
}

void DiskBar::saveElsewhere() {
    const QFileInfo record(m_window.session()->path());
    const QString path = QFileDialog::getSaveFileName(&m_window, tr("Save everything elsewhere and go on there"),
                                                      record.completeBaseName() + QStringLiteral("-rescued.caprail"),
                                                      tr("Build records (*.caprail)"));
    if (path.isEmpty()) {
        return;
    }
    const auto missing = m_window.session()->moveTo(path);
    if (!missing) {
        warn(&m_window, tr("Not saved"), QString::fromStdString(missing.error().sentence));
    } else if (!missing->isEmpty()) {
        warn(&m_window, tr("Saved without some photos"), missing->join(QLatin1Char('\n')));
    }
    refresh();
}

} // namespace caprail
