// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/shells.h>

#include <QHBoxLayout>
#include <QPushButton>
#include <assessment/current_readings.h>
#include <session/look.h>
#include <stations/common/plain_table.h>
#include <text/label.h>

namespace caprail {

BearingsShells::BearingsShells(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_shelf(new PlainTable(tr("Shells"),
                             {tr("Shell"), tr("Fits"), tr("Half"), tr("Thickness"), tr("As"), tr("Lies in")}, this)),
      m_shell(new FormFor<ShellMeasured>(session, tr("A half shell"), tr("Store &shell"),
                                         {{"shell", tr("Name"), tr("without spaces: U1"), {}},
                                          {"fits", tr("Fits"), {}, {}},
                                          {"thickness", tr("Thickness"), tr("at the crown"), {}},
                                          {"half", tr("Half"), {}, {}},
                                          {"is_marked", tr("As marked"), {}, {}},
                                          {"instrument", tr("Instrument"), {}, {}}},
                                         2, this)),
      m_bearings(new PlainTable(tr("Shells by bearing"),
                                {tr("Bearing"), tr("Upper"), tr("Lower"), tr("Chosen"), tr("Clearance then")}, this)),
      m_fitted(new FormFor<ShellsFitted>(session, tr("Shells put in by hand"), tr("Store &fitting"),
                                         {{"journal", tr("Bearing"), tr("main-3"), {}},
                                          {"upper", tr("Upper"), {}, {}},
                                          {"lower", tr("Lower"), {}, {}}},
                                         3, this)),
      m_words(new Label(this)), m_choose(new QPushButton(tr("&Choose from the shelf"), this)),
      m_takeOver(new QPushButton(tr("&Take over"), this)) {
    build();
}

void BearingsShells::build() {
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
    connect(m_shelf, &PlainTable::keySelected, this, [this](const QString& name) {
        const auto at = m_session.facts().shells.find(coreText(name));
        if (at != m_session.facts().shells.end()) {
            m_shell->load(at->second.back().what);
        }
    });
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
    connect(m_bearings, &PlainTable::keySelected, this, [this](const QString& name) {
        if (const auto journal = parseJournal(coreText(name))) {
            const auto at = m_session.facts().shellsFitted.find(*journal);
            m_fitted->load(at == m_session.facts().shellsFitted.end() ? ShellsFitted{*journal, {}, {}}
                                                                      : at->second.what);
        }
    });
    m_shell->clearField("thickness");
}

void BearingsShells::refresh() {
    const Facts& facts = m_session.facts();
    std::vector<QStringList> rows;
    for (const auto& [name, readings] : facts.shells) {
        const ShellMeasured& what = readings.back().what;
        const bool isMeasured =
            std::any_of(readings.begin(), readings.end(), [](const auto& r) { return !r.what.isMarked; });
        const auto where = whereFitted(facts, name);
        rows.push_back({qtText(name), qtShown(what.fits), qtShown(what.half),
                        qtText(format(*shellThickness(facts, name), m_session.units())),
                        isMeasured ? tr("measured") : tr("marked"), where ? qtText(describe(*where)) : tr("shelf")});
    }
    m_shelf->show(rows);
    if ((m_selection || m_runner.isBusy()) && m_selectedAt != m_session.ledger().size()) {
        m_runner.cancel();
        m_selection.reset(); // what it was chosen from has changed
    }
    showBearings();
}

void BearingsShells::showBearings() {
    const Facts& facts = m_session.facts();
    std::vector<QStringList> rows;
    if (facts.layout) {
        auto journals = facts.layout->mainJournals();
        const auto rods = facts.layout->rodJournals();
        journals.insert(journals.end(), rods.begin(), rods.end());
        for (const JournalId journal : journals) {
            const auto at = facts.shellsFitted.find(journal);
            QStringList row{qtText(code(journal)),
                            at == facts.shellsFitted.end() ? QString() : qtText(at->second.what.upper),
                            at == facts.shellsFitted.end() ? QString() : qtText(at->second.what.lower)};
            if (m_selection) {
                for (const ShellPair& pair : m_selection->pairs) {
                    if (pair.bearing == code(journal)) {
                        row << (pair.isFitted ? qtText(pair.upper + " + " + pair.lower) : tr("none left"))
                            << (pair.isFitted ? sign(pair.isInBand ? CheckState::good : CheckState::out) +
                                                    QLatin1Char(' ') + qtText(format(pair.clearance, m_session.units()))
                                              : QString());
                    }
                }
            }
            rows.push_back(row);
        }
    }
    m_bearings->show(rows);
    m_takeOver->setEnabled(m_selection.has_value());
    if (!m_selection) {
        m_words->setText(
            facts.shells.empty()
                ? tr("The shelf is empty: enter each half shell with its thickness.")
                : tr("The choice goes for most clearances in band, then closest to target, then least spread."));
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
    return named.isEmpty() ? QString() : tr(" Left out: %1.").arg(named.join(QStringLiteral("; ")));
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
    m_words->setText(
        qtText(m_selection->sentence) +
        (m_selection->isProven ? QString()
         : outcome.isFinal     ? tr(" (best found so far)")
                               : tr(" (still looking)")) +
        leftOutText());
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
        tr("Taken over: %1 bearings have other shells now. Measure their bores again.").arg(fittings->size()));
}

QString BearingsShells::sentence() const {
    return m_words->text();
}

void BearingsShells::focusField() {
    m_shell->focusField("shell");
}

} // namespace caprail
