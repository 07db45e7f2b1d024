// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/checks_view.h>

#include <QInputDialog>
#include <QKeyEvent>
#include <QPainter>
#include <session/look.h>

namespace caprail {

namespace {

constexpr int codeRole = Qt::UserRole;

QString textOf(const Check& check) {
    QString text = sign(check.state) + QStringLiteral("  ") + QString::fromStdString(check.title) +
                   QStringLiteral(" — ") + stateWord(check.state);
    if (!check.sentence.empty()) {
        text += QStringLiteral("\n      ") + QString::fromStdString(check.sentence);
    }
    if (!check.remedy.empty()) {
        text += QStringLiteral("\n      → ") + QString::fromStdString(check.remedy);
    }
    return text;
}

} // namespace

ChecksView::ChecksView(RecordSession& session, QWidget* parent) : QListWidget(parent), m_session(session) {
    setAccessibleName(tr("Checks"));
    setWordWrap(true);
    setSpacing(1);
    setUniformItemSizes(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(this, &QListWidget::itemClicked, this, &ChecksView::go);
    connect(this, &QListWidget::itemActivated, this, &ChecksView::go);
}

void ChecksView::setFilter(std::function<bool(const Check&)> filter) {
    m_filter = std::move(filter);
    refresh();
}

void ChecksView::refresh() {
    const QString selected = currentItem() ? currentItem()->data(codeRole).toString() : QString();
    clear();
    const Look look = screenLook();
    for (const Check& check : m_session.assessment().checks) {
        if (m_filter && !m_filter(check)) {
            continue;
        }
        auto* item = new QListWidgetItem(textOf(check), this);
        item->setData(codeRole, QString::fromStdString(check.code));
        item->setForeground(check.isGood() ? look.quiet : look.of(check.state));
        if (item->data(codeRole).toString() == selected) {
            setCurrentItem(item);
        }
    }
}

void ChecksView::go(QListWidgetItem* item) {
    if (const Check* check = m_session.assessment().find(item->data(codeRole).toString().toStdString())) {
        m_session.goTo(Place(check->place)); // a copy: going there may bring a new assessment
    }
}

void ChecksView::paintEvent(QPaintEvent* event) {
    QListWidget::paintEvent(event);
    if (count() == 0) {
        QPainter painter(viewport());
        painter.setPen(palette().color(QPalette::PlaceholderText));
        constexpr int margin = 8;
        painter.drawText(viewport()->rect().adjusted(margin, margin, -margin, -margin),
                         Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                         m_session.facts().layout
                             ? tr("No check concerns this place.")
                             : tr("Set the engine layout at the engine station: the checks follow from it."));
    }
}

void ChecksView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_J && currentItem() != nullptr) {
        const QString code = currentItem()->data(codeRole).toString();
        bool isGiven = false;
        const QString why = QInputDialog::getText(
            this, tr("Judge again"), tr("Why do the values of “%1” stand?").arg(code), QLineEdit::Normal, {}, &isGiven);
        if (isGiven) {
            m_session.append(JudgedAgain{code.toStdString(), why.toStdString()});
        }
        return;
    }
    QListWidget::keyPressEvent(event);
}

} // namespace caprail
