// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/gaps.h>

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <algorithm>
#include <base/say.h>
#include <ledger/expectations.h>
#include <stations/common/budget_window.h>
#include <stations/common/checks_view.h>
#include <stations/common/entries_model.h>
#include <stations/common/entries_table.h>
#include <stations/common/entry_field.h>
#include <stations/common/optional_field.h>
#include <stations/common/place_heading.h>
#include <stations/girdle/words.h>
#include <stations/common/instrument_box.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <stations/common/tab_order.h>
#include <text/ask.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <work/gap_pass.h>

namespace caprail {

namespace {

QString orderKey(std::size_t places) {
    return QStringLiteral("pass-order/%1").arg(places);
}

} // namespace

GirdleGaps::GirdleGaps(RecordSession& given, QWidget* parent)
    : GirdlePage(given, parent), m_heading(new PlaceHeading(this)), m_field(new EntryField(this)),
      m_pass(new QSpinBox(this)), m_instrument(new InstrumentBox(given, {InstrumentType::feelerGauge}, this)),
      m_straightedge(new InstrumentBox(given, {InstrumentType::straightedge}, this)),
      m_doesNotGo(new OptionalField(tr("Does not go"), tr("if it was tried: 22+23+13 thou"), m_field)),
      m_orderText(new Label(this)), m_next(new Label(this)), m_entries(new EntriesTable(given, this)),
      m_checks(new ChecksView(given, this)) {
    build();
    followLayout();
}

void GirdleGaps::build() {
    m_pass->setRange(1, 99);
    m_pass->setPrefix(tr("pass "));
    m_pass->setAccessibleName(tr("Pass"));
    connect(m_pass, &QSpinBox::valueChanged, this, [this] { refresh(m_position); });
    nameBox(*m_straightedge, tr("Straightedge across the rails"));
    m_orderText->setWordWrap(true);
    m_orderText->setSubject(tr("Order of the pass"));
    m_orderText->setForegroundRole(QPalette::PlaceholderText);
    auto* order = new QPushButton(tr("Order…"), this);
    setTip(order, tr("Change the order of the pass"));
    connect(order, &QPushButton::clicked, this, &GirdleGaps::editOrder);
    m_next->setWordWrap(true);
    m_entries->setColumnHidden(EntriesModel::person, true);
    m_entries->setColumnHidden(EntriesModel::time, true);
    m_entries->setFilter([this](const Entry& entry) {
        const auto* gap = entry.body.as<GapReading>();
        return gap != nullptr && gap->position == m_position;
    });
    m_checks->setFilter([this](const Check& check) {
        const auto* p = std::get_if<Position>(&check.subject);
        return p != nullptr && *p == m_position;
    });
    connect(m_heading, &PlaceHeading::whyAsked, this, [this] {
        BudgetWindow::open(tr("gap at %1").arg(qtText(describe(m_position))), gapBudgetOf(facts(), m_position),
                           session(), this);
    });
    m_field->readWith([this] { return m_instrument; });
    new StepKeys(m_field->lineEdit(), [this](int by) { emit stepped(by); });

    auto* settings = new QHBoxLayout;
    settings->addWidget(m_pass);
    settings->addWidget(m_instrument, 1);
    auto* orderRow = new QHBoxLayout;
    orderRow->addWidget(m_orderText, 1);
    orderRow->addWidget(order);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_heading);
    column->addWidget(m_field);
    column->addWidget(m_doesNotGo);
    column->addLayout(settings);
    column->addWidget(m_straightedge);
    column->addWidget(m_next);
    column->addLayout(orderRow);
    column->addWidget(m_entries, 2);
    column->addWidget(m_checks, 3);
    setFocusProxy(m_field);
    putProxyFirst(*this);
}

std::int64_t GirdleGaps::pass() const {
    return m_pass->value();
}

/// A layout that is new or has changed brings its own order, and the pass that is being read.
void GirdleGaps::followLayout() {
    std::vector<Position> places;
    if (facts().layout) {
        places = facts().layout->positions();
    }
    if (!std::ranges::is_permutation(places, m_order)) {
        m_order = std::move(places);
        // The order that this person walked last on an engine with these places.
        if (facts().layout) {
            const QString kept = QSettings().value(orderKey(m_order.size())).toString();
            if (auto order = parsePassOrder(coreText(kept), *facts().layout)) {
                m_order = std::move(*order);
            }
        }
        const PassStep begin = beginPass(m_order, assessment());
        const QSignalBlocker quiet(m_pass);
        m_pass->setValue(static_cast<int>(begin.pass));
        m_position = begin.position;
        emit chosen(begin.position);
    }
}

void GirdleGaps::refresh(Position selected) {
    m_position = selected;
    followLayout();
    m_instrument->refresh();
    m_straightedge->refresh();
    m_doesNotGo->follow(qtText(code(m_position)));
    m_entries->refresh();
    m_checks->refresh();
    m_orderText->setText(qtText(passOrderText(m_order)));
    if (!facts().layout) {
        m_heading->show(tr("No layout"), {}, CheckState::notDone,
                        tr("The positions follow from the engine layout: set it at the engine station."));
        m_field->setEnabled(false);
        return;
    }
    m_field->setEnabled(true);
    const GapResult gap = assessment().gaps.contains(m_position) ? assessment().gaps.at(m_position) : GapResult();
    const auto read = facts().gaps.find(m_position);
    const bool isRead = read != facts().gaps.end() && !read->second.empty();
    const Check* check = assessment().find("gap:" + code(m_position));
    m_heading->show(capitalised(qtText(describe(m_position))),
                    isRead ? qtText(format(read->second.back().what.value(), units())) : QStringLiteral("—"),
                    check == nullptr ? CheckState::notDone : check->state, gapSentence(gap, units()));
    m_heading->setAskable(!gap.current.empty());
    m_next->setText(whatFollows());
    askForGap();
}

QString GirdleGaps::whatFollows() const {
    const SurveyResult& survey = assessment().survey;
    if (survey.positions > 0 && survey.accepted == survey.positions) {
        return tr("Every gap is accepted: the survey is done.");
    }
    const PassStep next = nextInPass(m_order, m_position, pass(), assessment(), true);
    if (next.isFinished) {
        return tr("This is the last one.");
    }
    const QString place = qtText(code(next.position));
    return next.pass == pass() ? tr("Then %1 · %2 more in pass %3").arg(place).arg(next.left).arg(next.pass)
                               : tr("Then pass %1 begins at %2").arg(next.pass).arg(place);
}

void GirdleGaps::askForGap() {
    const auto read = [given = units(), what = Core::say("the gap at %1", describe(m_position))](const std::string& text) {
        return readLength(text, given, GapReading::kind, "gap", what);
    };
    m_field->askLength(tr("Gap at %1, pass %2").arg(qtText(describe(m_position))).arg(pass()), units(),
                       EntryField::LengthReader(read), [this](const Entered<Length>& gap) { return store(gap); });
}

Result<void> GirdleGaps::store(const Entered<Length>& gap) {
    const Position here = m_position;
    GapReading reading{here, pass(), gap, m_instrument->instrument()};
    if (auto tried = m_doesNotGo->read(reading.doesNotGo, units(), GapReading::kind, "does_not_go"); !tried) {
        return tried;
    }
    if (const std::string edge = m_straightedge->instrument(); !edge.empty()) {
        reading.straightedge = edge;
    }
    const auto stored = session().append(std::move(reading));
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    m_doesNotGo->clear();
    const PassStep next = nextInPass(m_order, here, pass(), assessment());
    {
        const QSignalBlocker quiet(m_pass);
        m_pass->setValue(static_cast<int>(next.pass));
    }
    m_position = next.position;
    emit chosen(next.position);
    return {};
}

void GirdleGaps::editOrder() {
    if (!facts().layout) {
        return;
    }
    const QString capByCap = qtText(passOrderText(passOrder(*facts().layout, PassOrder::capByCap)));
    const QString sideBySide = qtText(passOrderText(passOrder(*facts().layout, PassOrder::sideBySide)));
    auto text = askChoice(this, tr("Order of the pass"), tr("Choose an order, or type one: every place once."),
                          {qtText(passOrderText(m_order)), capByCap, sideBySide}, 0, true);
    while (text) {
        if (auto order = parsePassOrder(coreText(*text), *facts().layout)) {
            m_order = std::move(*order);
            QSettings().setValue(orderKey(m_order.size()), qtText(passOrderText(m_order)));
            refresh(m_position);
            return;
        } else {
            text = askChoice(this, tr("Order of the pass"), qtText(order.error().sentence),
                             {*text, capByCap, sideBySide}, 0, true);
        }
    }
}

void GirdleGaps::focusField() {
    m_field->setFocus();
}

bool GirdleGaps::type(const QString& text) {
    m_field->type(text);
    return true;
}

} // namespace caprail
