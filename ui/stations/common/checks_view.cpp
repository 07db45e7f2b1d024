// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/checks_view.h>

#include <QAction>
#include <QPainter>
#include <assessment/beside_verdict.h>
#include <assessment/rests_on.h>
#include <ledger/qt_text.h>
#include <session/look.h>
#include <text/ask.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

constexpr int codeRole = Qt::UserRole;

bool canJudge(const Facts& facts, const Check& check) {
    return check.state == CheckState::stale && canBeJudgedAgain(facts, check);
}

QString textOf(const Check& check, const Units& units) {
    QString text = sign(check.state) + QStringLiteral("  ") + QString::fromStdString(check.title) +
                   QStringLiteral(" — ") + stateWord(check.state);
    if (const std::string beside = besideVerdict(check, units); !beside.empty()) {
        // Not parted at the end of a line: a letter alone says nothing.
        text += QStringLiteral("  ·  ") +
                QString::fromStdString(beside).replace(QLatin1Char(' '), QChar(QChar::Nbsp)).replace(
                    QStringLiteral(",\u00A0"), QStringLiteral(", "));
    }
    if (!check.sentence.empty()) {
        text += QStringLiteral("\n      ") + QString::fromStdString(check.sentence);
    }
    if (!check.remedy.empty()) {
        text += QStringLiteral("\n      → ") + QString::fromStdString(check.remedy);
    }
    return text;
}

} // namespace

ChecksView::ChecksView(RecordSession& session, QWidget* parent)
    : QListWidget(parent), m_session(session), m_judge(new QAction(tr("Judge again…"), this)) {
    setAccessibleName(tr("Checks"));
    setWordWrap(true);
    setSpacing(1);
    setUniformItemSizes(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(this, &QListWidget::itemClicked, this, &ChecksView::go);
    connect(this, &QListWidget::itemActivated, this, &ChecksView::go);
    m_judge->setShortcut(Qt::Key_J);
    m_judge->setShortcutContext(Qt::WidgetShortcut);
    connect(m_judge, &QAction::triggered, this, &ChecksView::judgeAgain);
    connect(this, &QListWidget::currentItemChanged, this, &ChecksView::offer);
    addAction(m_judge);
    setContextMenuPolicy(Qt::ActionsContextMenu);
    offer();
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
        auto* item = new QListWidgetItem(textOf(check, m_session.units()), this);
        if (!check.judged.empty()) {
            setTip(item, tr("p: the probability that the value lies in its band; C: how many times over the band holds "
                            "four standard uncertainties. Below 1 it is weakly measured."));
        }
        if (canJudge(m_session.facts(), check)) {
            setTip(item, tr("J, or the context menu: say that the values stand, and judge it by the new numbers."));
        }
        item->setData(codeRole, QString::fromStdString(check.code));
        item->setForeground(check.isGood() ? look.quiet : look.of(check.state));
        if (item->data(codeRole).toString() == selected) {
            setCurrentItem(item);
        }
    }
    offer();
}

void ChecksView::go(QListWidgetItem* item) {
    if (const Check* check = checkOf(item)) {
        m_session.goTo(Destination(check->destination)); // a copy: going there may bring a new assessment
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

const Check* ChecksView::checkOf(const QListWidgetItem* item) const {
    return item == nullptr ? nullptr : m_session.assessment().find(coreText(item->data(codeRole).toString()));
}

void ChecksView::offer() {
    const Check* check = checkOf(currentItem());
    m_judge->setEnabled(check != nullptr && canJudge(m_session.facts(), *check));
}

void ChecksView::judgeAgain() {
    const Check* check = checkOf(currentItem());
    if (check == nullptr) {
        return;
    }
    const std::string checkCode =
        check->code; // a copy: the assessment may be another one when the question is answered
    const auto why = askText(this, tr("Judge again"), tr("Why do the values of “%1” stand?").arg(qtText(check->title)));
    if (why) {
        m_session.append(JudgedAgain{checkCode, why->toStdString()});
    }
}

} // namespace caprail
