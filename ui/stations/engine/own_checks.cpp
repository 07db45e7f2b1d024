// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/engine/own_checks.h>

#include <QPushButton>
#include <QVBoxLayout>
#include <session/filled.h>
#include <text/label.h>

namespace caprail {

namespace {

std::vector<FormField> checkFields() {
    return {{"own_check", EngineOwnChecks::tr("Name"), EngineOwnChecks::tr("without spaces: windage-tray"), {}},
            {"words", EngineOwnChecks::tr("What is looked at"), EngineOwnChecks::tr("in your own words"), {}},
            {"sort", EngineOwnChecks::tr("Answered by"), {}, {}},
            {"places", EngineOwnChecks::tr("Places"), EngineOwnChecks::tr("0 withdraws it"), {}},
            {"holds", EngineOwnChecks::tr("Holds"), {}, {}},
            {"step", EngineOwnChecks::tr("Which step"), {}, {}},
            {"lo", EngineOwnChecks::tr("From"), EngineOwnChecks::tr("measured ones only"), {}},
            {"hi", EngineOwnChecks::tr("To"), EngineOwnChecks::tr("measured ones only"), {}},
            {"source", EngineOwnChecks::tr("Who says so"), {}, {}, true}};
}

QString holdsText(const OwnCheckSet& check) {
    return check.step ? qtShown(*check.step) : qtShown(check.holds);
}

QString answeredText(const OwnCheckSet& check, const Units& units) {
    return check.lo && check.hi ? filled(EngineOwnChecks::tr("%1, %2 to %3"), qtShown(check.sort),
                                         exactText(check.lo->value, units), exactText(check.hi->value, units))
                                : qtShown(check.sort);
}

Table<OwnCheckSet, std::string>::Columns columnsOf(const RecordSession& session) {
    return {{.title = EngineOwnChecks::tr("Name"), .text = [](const OwnCheckSet& check) { return qtText(check.ownCheck); }},
            {.title = EngineOwnChecks::tr("What is looked at"),
             .text = [](const OwnCheckSet& check) { return qtText(check.words); }},
            {.title = EngineOwnChecks::tr("Answered by"),
             .text = [&session](const OwnCheckSet& check) { return answeredText(check, session.units()); }},
            {.title = EngineOwnChecks::tr("Places"),
             .text =
                 [](const OwnCheckSet& check) {
                     return check.places > 0 ? QString::number(check.places) : EngineOwnChecks::tr("withdrawn");
                 },
             .value = [](const OwnCheckSet& check) { return valueOf(check.places); }},
            {.title = EngineOwnChecks::tr("Holds"), .text = [](const OwnCheckSet& check) { return holdsText(check); }}};
}

} // namespace

EngineOwnChecks::EngineOwnChecks(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_table(new Table<OwnCheckSet, std::string>(tr("The shop's own checks"), &OwnCheckSet::ownCheck,
                                                  columnsOf(session), this)),
      m_form(new FormFor<OwnCheckSet>(session, {}, tr("Store &check"), checkFields(), 2, this)) {
    auto* fresh = new QPushButton(tr("&New check of the shop's own"), this);
    fresh->setAutoDefault(false);
    auto* words = new Label(tr("Windage tray, pump and pickup bolts, rear main seal, oil-way plugs, blind holes dry: what the "
                               "shop looks at besides. A check holds the trial fit, closing, or one closing step until it "
                               "is good at every place. Saved with a template, it is asked on every engine made from it."),
                            this);
    words->setWordWrap(true);
    words->setForegroundRole(QPalette::PlaceholderText);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_table, 1);
    column->addWidget(fresh, 0, Qt::AlignLeft);
    column->addWidget(m_form);
    column->addWidget(words);
    connect(m_table, &TableView::lineSelected, this, [this] { showCheck(selectedName()); });
    connect(m_table, &TableView::lineActivated, this, [this] { m_form->focusField("words"); });
    connect(m_form, &EntryForm::reverted, this, [this] { showCheck(selectedName()); });
    connect(fresh, &QPushButton::clicked, this, [this] {
        m_table->selectLine(-1);
        m_form->putBack();
        m_form->load(OwnCheckSet{});
        m_form->focusField("own_check");
    });
    refresh();
}

QString EngineOwnChecks::selectedName() const {
    return qtText(m_table->selectedKey().value_or(std::string()));
}

void EngineOwnChecks::refresh() {
    std::vector<OwnCheckSet> rows;
    for (const auto& check : m_session.facts().ownChecks) {
        rows.push_back(check.what);
    }
    m_table->put(std::move(rows));
    if (!m_form->isTouched()) {
        showCheck(selectedName());
    }
}

void EngineOwnChecks::selectCheck(const QString& name) {
    m_table->select(coreText(name));
    m_form->focusField(name.isEmpty() ? "own_check" : "words");
}

void EngineOwnChecks::showCheck(const QString& name) {
    const auto* check = m_session.facts().ownCheckNamed(coreText(name));
    m_form->load(check == nullptr ? OwnCheckSet{} : check->what);
}

} // namespace caprail
