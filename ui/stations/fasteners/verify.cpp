// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/fasteners/verify.h>

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <algorithm>
#include <stations/common/entry_field.h>
#include <stations/fasteners/words.h>
#include <work/tightening.h>
#include <stations/common/wrench_words.h>
#include <stations/common/place_heading.h>
#include <stations/common/instrument_box.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <stations/common/tab_order.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

/// A fastener that moved in the round, and what that means.
struct MovedRow {
    FastenerId fastener;
    QString consequence;
};

FastenersVerify::FastenersVerify(RecordSession& given, QWidget* parent)
    : FastenersPage(given, parent), m_heading(new PlaceHeading(this)), m_field(new EntryField(this)),
      m_instrument(new InstrumentBox(given, {InstrumentType::torqueWrench}, this)),
      m_gauge(new InstrumentBox(given, {InstrumentType::stretchGauge, InstrumentType::micrometer}, this)),
      m_remark(new Label(this)), m_progress(new QProgressBar(this)), m_state(new Label(this)),
      m_stacks(new QPushButton(this)), m_begin(new QPushButton(this)), m_held(new QPushButton(tr("Hel&d"), this)),
      m_moved(new List<MovedRow, FastenerId>(
          tr("What moved in this round, and what it made stale"), &MovedRow::fastener,
          {{.text = [](const MovedRow& row) { return QStringLiteral("↷ ") + row.consequence; },
            .ink = [](const MovedRow&, const Look& look) { return look.out; },
            .tip = [](const MovedRow&) { return tr("Enter goes to the gap"); }}},
          this)) {
    build();
}

void FastenersVerify::build() {
    m_begin->setObjectName(QStringLiteral("beginRound"));
    m_stacks->setObjectName(QStringLiteral("takeStacksOff"));
    m_moved->setObjectName(QStringLiteral("moved"));
    m_remark->setWordWrap(true);
    m_state->setWordWrap(true);
    m_state->setMinimumHeight(m_state->fontMetrics().lineSpacing() * 3);
    m_state->setAlignment(Qt::AlignTop);
    m_progress->setAccessibleName(tr("Fasteners verified in this round"));
    m_moved->setWordWrap(true);
    QFont large = m_held->font();
    large.setPointSizeF(large.pointSizeF() * 1.4);
    for (QPushButton* button : {m_held, m_begin, m_stacks}) {
        button->setAutoDefault(false);
        button->setFont(large);
        button->setMinimumHeight(42);
    }
    setTip(m_held, tr("H"));
    m_field->lineEdit()->installEventFilter(this);
    m_field->readWith([this] { return m_gauge->isVisibleTo(this) ? m_gauge : m_instrument; });
    new StepKeys(m_field->lineEdit(), [this](int by) { emit stepped(by); });
    connect(m_begin, &QPushButton::clicked, this, &FastenersVerify::begin);
    connect(m_stacks, &QPushButton::clicked, this, &FastenersVerify::takeStacksOff);
    connect(m_held, &QPushButton::clicked, this, &FastenersVerify::held);
    connect(m_instrument, &QComboBox::activated, this, [this] { refresh(m_fastener); });
    connect(m_moved, &ListView::lineActivated, this, [this](int line) {
        const MovedRow* row = m_moved->at(line);
        const bool isCap = row != nullptr && row->fastener.kind == FastenerKind::mainCap;
        session().goTo({Station::girdle, isCap ? code(Position{row->fastener.number, row->fastener.side}) : std::string()});
    });

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_heading);
    column->addWidget(m_instrument);
    column->addWidget(m_gauge);
    column->addWidget(m_remark);
    column->addWidget(m_field);
    column->addWidget(m_held);
    column->addWidget(m_stacks);
    column->addWidget(m_begin);
    column->addWidget(m_progress);
    column->addWidget(m_state);
    column->addWidget(m_moved, 100);
    column->addStretch(1);
    setFocusProxy(m_field);
    putProxyFirst(*this);
}

std::vector<FastenerId> FastenersVerify::order() const {
    return verifyOrder(facts());
}

std::optional<FastenerId> FastenersVerify::next() const {
    const RoundFact* round = roundUnderWay(facts());
    return round == nullptr ? std::nullopt : std::optional(stillToPull(facts(), *round).front());
}

QString FastenersVerify::progressText() const {
    return tr("%1 of %2").arg(m_progress->value()).arg(m_progress->maximum());
}

VerifyMethod FastenersVerify::method() const {
    const auto* group = facts().groupOf(m_fastener);
    return group == nullptr ? VerifyMethod::torque : verifiedBy(group->what);
}

void FastenersVerify::refresh(FastenerId selected) {
    m_fastener = selected;
    m_instrument->refresh();
    m_gauge->refresh();
    m_instrument->setVisible(method() == VerifyMethod::torque);
    m_gauge->setVisible(method() == VerifyMethod::length);
    showRound();
    showMoved();
    const auto specified = asSpecified(facts(), m_fastener, {});
    const QString remark = wrenchRemark(
        facts(), m_instrument->instrument(),
        specified && specified->torque ? std::optional(specified->torque->value) : std::nullopt, today(), units());
    m_remark->setText(remark.isEmpty() ? remark : QStringLiteral("⚑ ") + remark);
    m_remark->setVisible(!remark.isEmpty());
    QPalette palette = m_remark->palette();
    palette.setColor(QPalette::WindowText, screenLook().close);
    m_remark->setPalette(palette);
}

void FastenersVerify::showRound() {
    const RoundFact* round = roundUnderWay(facts());
    const RoundFact* last = facts().rounds.empty() ? nullptr : &facts().rounds.back();
    const bool isOpen = round != nullptr;
    const auto total = order().size();
    const std::size_t stacksOn = facts().stacksOn().size();
    m_progress->setRange(0, std::max(1, static_cast<int>(total)));
    m_progress->setValue(last == nullptr ? 0 : static_cast<int>(total - stillToPull(facts(), *last).size()));
    m_progress->setFormat(progressText());
    m_progress->setVisible(last != nullptr);
    m_field->setVisible(isOpen);
    m_held->setVisible(isOpen && method() != VerifyMethod::length);
    m_held->setText(method() == VerifyMethod::witnessMark ? tr("Mark in &line") : tr("Hel&d"));
    m_stacks->setVisible(!isOpen && stacksOn > 0);
    m_stacks->setText(tr("Take &off all %1 stacks").arg(stacksOn));
    m_begin->setVisible(!isOpen && stacksOn == 0);
    m_begin->setEnabled(total > 0);
    const std::int64_t number = last == nullptr ? 1 : last->begun.what.round + 1;
    m_begin->setText(tr("&Begin verify round %1").arg(number));

    const Check* check = assessment().find("verify-round");
    m_state->setText(check == nullptr
                         ? QString()
                         : sign(check->state) + QLatin1Char(' ') + qtText(check->sentence) +
                               (check->remedy.empty() ? QString() : QStringLiteral(" → ")) + qtText(check->remedy));
    const bool hasOutcome = last != nullptr && last->outcomes.contains(m_fastener);
    const CheckState state = !hasOutcome ? CheckState::notDone
                             : last->outcomes.at(m_fastener).what.outcome == Outcome::moved ? CheckState::out
                             : whyNotCounted(facts(), last->outcomes.at(m_fastener))        ? CheckState::notProven
                                                                                            : CheckState::good;
    m_heading->show(total == 0 ? tr("No layout") : capitalised(qtText(describe(m_fastener))),
                    isOpen ? progressText() : QString(), isOpen ? state : CheckState::notDone,
                    total == 0 ? tr("Set the engine layout at the engine station first.")
                               : specifiedText(facts(), m_fastener, units()));
    if (isOpen) {
        askForOutcome(round->begun.what.round);
    }
}

void FastenersVerify::askForOutcome(std::int64_t round) {
    const bool isLength = method() == VerifyMethod::length;
    const QString asked =
        isLength ? tr("Round %1: the stretch that is read now, or the angle it moved as 4°")
        : method() == VerifyMethod::witnessMark
            ? tr("Round %1: H if its mark still lines up, else the angle it moved")
            : tr("Round %1: H if it held, else the angle it moved");
    m_field->ask(
        asked.arg(round), isLength ? qtText(symbol(units().length)) : QStringLiteral("°"),
        [this](const QString& text) {
            return read(text).map([this](const RoundOutcome& outcome) { return foundText(outcome, units()); });
        },
        [this](const QString& text) -> Result<void> {
            const auto outcome = read(text);
            return outcome ? store(*outcome) : Result<void>(tl::unexpected(outcome.error()));
        });
}

void FastenersVerify::showMoved() {
    std::vector<MovedRow> rows;
    if (!facts().rounds.empty()) {
        for (const auto& [fastener, outcome] : facts().rounds.back().outcomes) {
            const QString words = consequenceText(facts(), assessment(), outcome, units());
            if (!words.isEmpty()) {
                rows.push_back({fastener, words});
            }
        }
    }
    m_moved->put(std::move(rows));
    m_moved->setVisible(m_moved->count() > 0);
}

Result<RoundOutcome> FastenersVerify::read(const QString& text) const {
    const std::string with = method() == VerifyMethod::torque   ? m_instrument->instrument()
                             : method() == VerifyMethod::length ? m_gauge->instrument()
                                                                : std::string();
    return parseOutcome(facts(), m_fastener, coreText(text), with, units());
}

Result<void> FastenersVerify::store(const RoundOutcome& outcome) {
    const auto sequence = order();
    const auto stored = session().append(outcome);
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    const RoundFact* round = roundUnderWay(facts());
    if (round == nullptr) {
        return {};
    }
    // On along the sequence, around its end to what was left out.
    const auto here = std::ranges::find(sequence, outcome.fastener);
    const auto left = stillToPull(facts(), *round);
    const auto isOpen = [&](FastenerId f) { return std::ranges::find(left, f) != left.end(); };
    const auto after = std::find_if(here, sequence.end(), isOpen);
    emit chosen(after != sequence.end() ? *after : *std::ranges::find_if(sequence, isOpen));
    return {};
}

void FastenersVerify::begin() {
    const std::int64_t number = facts().rounds.empty() ? 1 : facts().rounds.back().begun.what.round + 1;
    const auto begun = session().append(RoundBegun{number, m_instrument->instrument()});
    if (!begun) {
        m_state->setText(QStringLiteral("✕ ") + qtText(begun.error().sentence));
        return;
    }
    if (const auto first = next()) {
        emit chosen(*first);
    }
    focusField();
}

void FastenersVerify::takeStacksOff() {
    std::vector<Body> moves;
    for (const Position p : facts().stacksOn()) {
        moves.emplace_back(StackMoved{p, StackMove::takenOff});
    }
    if (const auto done = session().appendAll(std::move(moves)); !done) {
        m_state->setText(QStringLiteral("✕ ") + qtText(done.error().sentence));
    }
    m_begin->setFocus();
}

void FastenersVerify::held() {
    m_field->type(QStringLiteral("h"));
    m_field->submit();
    focusField();
}

bool FastenersVerify::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_field->lineEdit() && event->type() == QEvent::KeyPress && m_field->text().isEmpty()) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_H && method() != VerifyMethod::length && !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier))) {
            held();
            return true;
        }
    }
    return FastenersPage::eventFilter(watched, event);
}

std::vector<BenchWord> FastenersVerify::words() const {
    if (roundUnderWay(facts()) == nullptr || method() == VerifyMethod::length) {
        return {};
    }
    return {{method() == VerifyMethod::witnessMark ? tr("Mark in line") : tr("Held"), QStringLiteral("h")}};
}

void FastenersVerify::focusField() {
    if (m_field->isVisibleTo(this)) {
        m_field->setFocus();
    } else if (m_stacks->isVisibleTo(this)) {
        m_stacks->setFocus();
    } else {
        m_begin->setFocus();
    }
}

void FastenersVerify::type(const QString& text) {
    if (roundUnderWay(facts()) == nullptr) {
        return;
    }
    if (text.compare(QLatin1String("h"), Qt::CaseInsensitive) == 0) {
        held();
    } else {
        m_field->type(text);
    }
}

} // namespace caprail
