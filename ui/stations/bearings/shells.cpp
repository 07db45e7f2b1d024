// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/shells.h>

#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>
#include <assessment/current_readings.h>
#include <session/filled.h>
#include <session/look.h>
#include <stations/common/station_text.h>
#include <text/label.h>

namespace caprail {

/// A half shell of the shelf.
struct ShelfRow {
    ShellMeasured what; ///< the last said of it
    Length thickness;
    bool isMeasured = false; ///< else as marked
    std::optional<JournalId> liesIn;
};

/// A bearing with the shells that lie in it, and those that were chosen for it.
struct BearingRow {
    JournalId journal;
    std::string upper, lower;
    std::optional<ShellPair> chosen;
};

namespace {

std::vector<TableColumn<ShelfRow>> shelfColumns(const RecordSession& session) {
    return {{.title = BearingsShells::tr("Shell"), .text = [](const ShelfRow& row) { return qtText(row.what.shell); }},
            {.title = BearingsShells::tr("Fits"), .text = [](const ShelfRow& row) { return qtShown(row.what.fits); }},
            {.title = BearingsShells::tr("Half"), .text = [](const ShelfRow& row) { return qtShown(row.what.half); }},
            {.title = BearingsShells::tr("Thickness"),
             .text = [&session](const ShelfRow& row) { return qtText(format(row.thickness, session.units())); },
             .value = [](const ShelfRow& row) { return valueOf(row.thickness); },
             .isFigure = true},
            {.title = BearingsShells::tr("As"),
             .text =
                 [](const ShelfRow& row) {
                     return row.isMeasured ? BearingsShells::tr("measured") : BearingsShells::tr("marked");
                 }},
            {.title = BearingsShells::tr("Lies in"), .text = [](const ShelfRow& row) {
                 return row.liesIn ? qtText(describe(*row.liesIn)) : BearingsShells::tr("shelf");
             }}};
}

std::vector<TableColumn<BearingRow>> bearingColumns(const RecordSession& session) {
    return {{.title = BearingsShells::tr("Bearing"),
             .text = [](const BearingRow& row) { return qtText(code(row.journal)); }},
            {.title = BearingsShells::tr("Upper"), .text = [](const BearingRow& row) { return qtText(row.upper); }},
            {.title = BearingsShells::tr("Lower"), .text = [](const BearingRow& row) { return qtText(row.lower); }},
            {.title = BearingsShells::tr("Chosen"),
             .text =
                 [](const BearingRow& row) {
                     return !row.chosen           ? QString()
                            : row.chosen->isFitted ? qtText(row.chosen->upper + " + " + row.chosen->lower)
                                                   : BearingsShells::tr("none left");
                 }},
            {.title = BearingsShells::tr("Clearance then"),
             .text =
                 [&session](const BearingRow& row) {
                     return row.chosen && row.chosen->isFitted
                                ? sign(row.chosen->isInBand ? CheckState::good : CheckState::out) + QLatin1Char(' ') +
                                      qtText(format(row.chosen->clearance, session.units()))
                                : QString();
                 },
             .value =
                 [](const BearingRow& row) {
                     return row.chosen && row.chosen->isFitted ? valueOf(row.chosen->clearance) : SortValue();
                 }}};
}

} // namespace

BearingsShells::BearingsShells(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_shelf(new Table<ShelfRow, std::string>(
          tr("Shells"), [](const ShelfRow& row) { return row.what.shell; }, shelfColumns(session), this)),
      m_shell(new FormFor<ShellMeasured>(session, tr("A half shell"), tr("Store shel&l"),
                                         {{"shell", tr("Name"), tr("without spaces: U1"), {}},
                                          {"fits", tr("Fits"), {}, {}},
                                          {"thickness", tr("Thickness"), tr("at the crown"), {}},
                                          {"half", tr("Half"), {}, {}},
                                          {"is_marked", tr("As marked"), {}, {}},
                                          {"instrument", tr("Instrument"), {}, {}}},
                                         2, this)),
      m_bearings(new Table<BearingRow, JournalId>(tr("Shells by bearing"), &BearingRow::journal,
                                                  bearingColumns(session), this)),
      m_fitted(new FormFor<ShellsFitted>(session, tr("Shells put in by hand"), tr("Store fitti&ng"),
                                         {{"journal", tr("Bearing"), tr("main-3"), {}},
                                          {"upper", tr("Upper"), {}, {}},
                                          {"lower", tr("Lower"), {}, {}}},
                                         3, this)),
      m_words(new Label(this)), m_choose(new QPushButton(tr("&Choose from the shelf"), this)),
      m_takeOver(new QPushButton(tr("&Take over"), this)) {
    build();
}

void BearingsShells::build() {
    m_shell->setObjectName(QStringLiteral("shellForm"));
    m_fitted->setObjectName(QStringLiteral("fittedForm"));
    m_choose->setObjectName(QStringLiteral("chooseShells"));
    m_takeOver->setObjectName(QStringLiteral("takeOverShells"));
    m_words->setObjectName(QStringLiteral("shellWords"));
    m_words->setWordWrap(true);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_words->setAlignment(Qt::AlignTop);
    auto* left = new QVBoxLayout;
    left->addWidget(m_shelf, 1);
    left->addWidget(m_shell);
    auto* actions = new QHBoxLayout;
    actions->addWidget(m_choose);
    actions->addWidget(m_takeOver);
    actions->addStretch(1);
    auto* right = new QVBoxLayout;
    right->addWidget(m_bearings, 1);
    right->addWidget(m_words);
    right->addLayout(actions);
    right->addWidget(m_fitted);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    row->addLayout(left, 1);
    row->addLayout(right, 1);
    m_choose->setAutoDefault(false);
    m_takeOver->setAutoDefault(false);
    connect(m_choose, &QPushButton::clicked, this, &BearingsShells::chooseShells);
    connect(m_takeOver, &QPushButton::clicked, this, &BearingsShells::takeOver);
    connect(&m_runner, &ShellRunner::chosen, this, &BearingsShells::showChosen);
    connect(m_shelf, &TableView::lineSelected, this, &BearingsShells::showShell);
    connect(m_shell, &EntryForm::reverted, this, &BearingsShells::showShell);
    connect(m_shell, &EntryForm::saved, this, [this] {
        // The next one is most often of the same kind: only its name and thickness are typed.
        ShellMeasured next;
        for (const auto& [name, readings] : m_session.facts().shells) {
            if (readings.back().entry == m_session.ledger().size()) {
                next = readings.back().what;
            }
        }
        next.shell.clear();
        next.thickness = {};
        m_shell->load(next);
        m_shell->clearField("thickness");
        m_shell->focusField("shell");
    });
    connect(m_bearings, &TableView::lineSelected, this, &BearingsShells::showFitting);
    connect(m_fitted, &EntryForm::reverted, this, &BearingsShells::showFitting);
    m_shell->clearField("thickness");
}

void BearingsShells::showShell() {
    const ShelfRow* shell = m_shelf->selected();
    m_shell->load(shell == nullptr ? ShellMeasured{} : shell->what);
    if (shell == nullptr) {
        m_shell->clearField("thickness");
    }
}

void BearingsShells::showFitting() {
    if (const BearingRow* bearing = m_bearings->selected()) {
        const auto at = m_session.facts().shellsFitted.find(bearing->journal);
        m_fitted->load(at == m_session.facts().shellsFitted.end() ? ShellsFitted{bearing->journal, {}, {}}
                                                                  : at->second.what);
    } else {
        m_fitted->load(ShellsFitted{});
    }
}

void BearingsShells::refresh() {
    const Facts& facts = m_session.facts();
    std::vector<ShelfRow> rows;
    for (const auto& [name, readings] : facts.shells) {
        const bool isMeasured =
            std::any_of(readings.begin(), readings.end(), [](const auto& r) { return !r.what.isMarked; });
        rows.push_back({readings.back().what, *shellThickness(facts, name), isMeasured, whereFitted(facts, name)});
    }
    m_shelf->put(std::move(rows));
    if ((m_selection || m_runner.isBusy()) && m_selectedAt != m_session.ledger().size()) {
        m_runner.cancel();
        m_selection.reset(); // what it was chosen from has changed
    }
    showBearings();
}

void BearingsShells::showBearings() {
    const Facts& facts = m_session.facts();
    std::vector<BearingRow> rows;
    if (facts.layout) {
        auto journals = facts.layout->mainJournals();
        const auto rods = facts.layout->rodJournals();
        journals.insert(journals.end(), rods.begin(), rods.end());
        for (const JournalId journal : journals) {
            BearingRow row{journal, {}, {}, {}};
            if (const auto at = facts.shellsFitted.find(journal); at != facts.shellsFitted.end()) {
                row.upper = at->second.what.upper;
                row.lower = at->second.what.lower;
            }
            if (m_selection) {
                const auto pair = std::ranges::find(m_selection->pairs, code(journal), &ShellPair::bearing);
                row.chosen = pair == m_selection->pairs.end() ? std::nullopt : std::optional(*pair);
            }
            rows.push_back(std::move(row));
        }
    }
    m_bearings->put(std::move(rows));
    m_takeOver->setEnabled(m_selection.has_value());
    if (!m_selection) {
        m_words->setText(facts.shells.empty()
                             ? tr("The shelf is empty: enter each half shell with its thickness.")
                             : tr("Chosen for most clearances in band, then closest to target, then least spread."));
    }
}

/// The first few of the bearings that could not be asked for.
QString BearingsShells::leftOutText() const {
    constexpr std::size_t most = 4;
    QStringList named;
    for (const std::string& why : m_leftOut) {
        if (named.size() < static_cast<qsizetype>(most)) {
            named << qtText(why);
        }
    }
    return named.isEmpty() ? QString() : tr("Left out: %1.").arg(named.join(QStringLiteral("; ")));
}

void BearingsShells::chooseShells() {
    ShellRequest request = shellRequestFor(m_session.facts());
    m_selection.reset();
    m_selectedAt = m_session.ledger().size();
    m_leftOut = request.leftOut;
    showBearings();
    m_words->setText(tr("Choosing …"));
    m_runner.choose(std::move(request.bearings), std::move(request.shelf), m_session.units());
}

/// Called for each better selection while the choice goes on, and at its end.
void BearingsShells::showChosen(const ShellOutcome& outcome) {
    if (!outcome.selection) {
        showBearings();
        m_words->setText(QStringLiteral("✕ ") + qtText(outcome.problem) +
                         (m_leftOut.empty() ? QString() : QLatin1Char(' ') + qtText(m_leftOut.front()) + QLatin1Char('.')));
        return;
    }
    const bool isFirst = !m_selection;
    m_selection = outcome.selection;
    showBearings();
    const QString chosen = qtText(m_selection->sentence);
    const QString standing = m_selection->isProven ? chosen
                             : outcome.isFinal     ? tr("%1 (best found so far)").arg(chosen)
                                                   : tr("%1 (still looking)").arg(chosen);
    m_words->setText(joined({standing, leftOutText()}, QStringLiteral(" ")));
    if (isFirst && m_choose->hasFocus()) {
        m_takeOver->setFocus();
    }
}

void BearingsShells::takeOver() {
    if (!m_selection) {
        return;
    }
    m_runner.cancel(); // what is shown is taken
    const auto fittings = fittingsFor(m_session.facts(), *m_selection);
    if (!fittings) {
        m_words->setText(QStringLiteral("✕ ") + qtText(fittings.error().sentence));
        return;
    }
    std::vector<Body> entries(fittings->begin(), fittings->end());
    if (const auto stored = m_session.appendAll(std::move(entries)); !stored) {
        m_words->setText(QStringLiteral("✕ ") + qtText(stored.error().sentence));
        return;
    }
    refresh();
    m_words->setText(
        tr("Entered: %1 bearings have other shells now. Measure their bores again.").arg(fittings->size()));
}

void BearingsShells::focusField() {
    m_shell->focusField("shell");
}

} // namespace caprail
