// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/checks_view.h>

#include <QAction>
#include <assessment/beside_verdict.h>
#include <assessment/rests_on.h>
#include <ledger/qt_text.h>
#include <session/look.h>
#include <text/ask.h>

namespace caprail {

namespace {

bool canJudge(const Facts& facts, const Check& check) {
    return check.state == CheckState::stale && canBeJudgedAgain(facts, check);
}

QString checkText(const Check& check, const Units& units) {
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
    : List(tr("Checks"), &Check::code,
           {{.text = [this](const Check& check) { return checkText(check, m_session.units()); },
             .ink = [](const Check& check,
                       const Look& look) { return check.isGood() ? look.quiet : look.of(check.state); },
             .tip =
                 [this](const Check& check) {
                     return canJudge(m_session.facts(), check)
                                ? tr("J, or the context menu: accept the values by the new numbers, with a reason.")
                            : !check.judged.empty()
                                ? tr("p: the probability that the value lies in its band; C: how many times over the "
                                     "band holds four standard uncertainties. Below 1 it is weakly measured.")
                                : QString();
                 }}},
           parent),
      m_session(session), m_judge(new QAction(tr("Accept again…"), this)) {
    setWordWrap(true);
    setSpacing(1);
    setUniformItemSizes(false);
    connect(this, &QListView::clicked, this, [this](const QModelIndex& index) { go(index.row()); });
    connect(this, &ListView::lineActivated, this, &ChecksView::go);
    m_judge->setShortcut(Qt::Key_J);
    m_judge->setShortcutContext(Qt::WidgetShortcut);
    connect(m_judge, &QAction::triggered, this, &ChecksView::judgeAgain);
    connect(this, &ListView::lineSelected, this, &ChecksView::offer);
    addAction(m_judge);
    setContextMenuPolicy(Qt::ActionsContextMenu);
    offer();
}

void ChecksView::setFilter(std::function<bool(const Check&)> filter) {
    m_filter = std::move(filter);
    refresh();
}

void ChecksView::refresh() {
    std::vector<Check> checks;
    for (const Check& check : m_session.assessment().checks) {
        if (!m_filter || m_filter(check)) {
            checks.push_back(check);
        }
    }
    setEmptyText(m_session.facts().layout
                     ? tr("No check concerns this place.")
                     : tr("Set the engine layout at the engine station: the checks follow from it."));
    put(std::move(checks));
    offer();
}

void ChecksView::go(int line) {
    if (const Check* check = at(line)) {
        m_session.goTo(Destination(check->destination)); // a copy: going there may bring a new assessment
    }
}

void ChecksView::offer() {
    const Check* check = selected();
    m_judge->setEnabled(check != nullptr && canJudge(m_session.facts(), *check));
}

void ChecksView::judgeAgain() {
    const Check* check = selected();
    if (check == nullptr) {
        return;
    }
    const std::string checkCode =
        check->code; // a copy: the assessment may be another one when the question is answered
    const auto why =
        askText(this, tr("Accept again"), tr("Why are the values of “%1” accepted?").arg(qtText(check->title)));
    if (why) {
        m_session.appendAndSay(JudgedAgain{checkCode, why->toStdString()});
    }
}

} // namespace caprail
