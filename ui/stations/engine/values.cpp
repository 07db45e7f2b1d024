// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/engine/values.h>

#include <QVBoxLayout>
#include <algorithm>
#include <session/look.h>

namespace caprail {

namespace {

Table<ValueStanding, std::string>::Columns valueColumns() {
    return {{.title = EngineValues::tr("Value"), .text = [](const ValueStanding& value) { return qtText(value.title); }},
            {.title = EngineValues::tr("Figure"),
             .text = [](const ValueStanding& value) { return qtText(value.figure); },
             .isFigure = true},
            {.title = EngineValues::tr("Whose figure it is"),
             .text =
                 [](const ValueStanding& value) {
                     return value.source.empty() ? EngineValues::tr("the program's own default") : qtText(value.source);
                 }},
            {.title = EngineValues::tr("Confirmed"),
             .text =
                 [](const ValueStanding& value) {
                     return !value.isConfirmed ? QStringLiteral("⚑ ") + EngineValues::tr("by nobody")
                            : value.by.empty() ? QStringLiteral("✓ ") + EngineValues::tr("when it was set")
                                               : QStringLiteral("✓ ") + EngineValues::tr("by %1").arg(qtText(value.by));
                 },
             .ink = [](const ValueStanding& value,
                       const Look& look) { return value.isConfirmed ? QColor() : look.close; }}};
}

} // namespace

EngineValues::EngineValues(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_line(new Label(this)),
      m_table(new Table<ValueStanding, std::string>(tr("Values and whose they are"), &ValueStanding::code, valueColumns(),
                                                    this)),
      m_form(new FormFor<ValueConfirmed>(session, {}, tr("&Confirm this value"),
                                         {{"source", tr("Whose figure it is"),
                                           tr("the maker's sheet, a drawing, a person by name"), {}, true}},
                                         1, this)) {
    m_line->setObjectName(QStringLiteral("unconfirmed"));
    m_line->setWordWrap(true);
    m_table->setObjectName(QStringLiteral("values"));
    m_form->setObjectName(QStringLiteral("confirmForm"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_line);
    column->addWidget(m_table, 1);
    column->addWidget(m_form);
    connect(m_table, &TableView::lineSelected, this, &EngineValues::showValue);
    connect(m_table, &TableView::lineActivated, this, [this] { m_form->focusField("source"); });
    connect(m_form, &EntryForm::reverted, this, &EngineValues::showValue);
    connect(m_form, &EntryForm::saved, this, &EngineValues::selectOpen);
    refresh();
}

void EngineValues::refresh() {
    auto values = valuesOf(m_session.facts(), m_session.units());
    const std::string sentence = unconfirmedSentence(values);
    m_line->setText(sentence.empty() ? tr("Somebody has said of every value whose figure it is.") : qtText(sentence));
    m_table->put(std::move(values));
    if (!m_form->isTouched()) {
        showValue();
    }
}

void EngineValues::selectOpen() {
    const auto open = std::ranges::find(m_table->rows(), false, &ValueStanding::isConfirmed);
    if (open != m_table->rows().end()) {
        m_table->select(std::string(open->code));
    }
    m_form->focusField("source");
}

void EngineValues::showValue() {
    const ValueStanding* value = m_table->selected();
    ValueConfirmed said;
    if (value != nullptr) {
        said.value = value->code;
        said.source = value->isConfirmed ? value->source : std::string();
    }
    m_form->load(said);
    m_form->setEnabled(value != nullptr);
    m_form->setRemark(value == nullptr ? QString() : qtText(value->title) + QStringLiteral(": ") + qtText(value->figure));
}

} // namespace caprail
