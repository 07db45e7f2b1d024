// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/fasteners/clamp.h>

#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>
#include <assessment/admission.h>
#include <ledger/expectations.h>
#include <stations/common/entry_field.h>
#include <stations/common/instrument_box.h>
#include <stations/common/place_heading.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <stations/common/tab_order.h>
#include <stations/fasteners/words.h>
#include <text/plain_text.h>
#include <work/clamp_working.h>
#include <work/tightening.h>

namespace caprail {

FastenersClamp::FastenersClamp(RecordSession& given, QWidget* parent)
    : FastenersPage(given, parent), m_heading(new PlaceHeading(this)),
      m_instrument(new InstrumentBox(given, {InstrumentType::torqueWrench}, this)), m_field(new EntryField(this)),
      m_caution(new Label(tr("Turn it a little further, slowly, and note the torque; then back, slowly, and note that. It is "
                             "loose then: tighten it again. A fastener by angle, to yield or by stretch is not tried so."),
                          this)),
      m_result(new QPlainTextEdit(this)) {
    m_caution->setWordWrap(true);
    m_caution->setForegroundRole(QPalette::PlaceholderText);
    m_result->setObjectName(QStringLiteral("clampResult"));
    m_result->setReadOnly(true);
    m_result->setTabChangesFocus(true);
    m_result->setFrameShape(QFrame::NoFrame);
    m_result->setAccessibleName(tr("What it clamps with"));
    m_field->readWith([this] { return m_instrument; });
    new StepKeys(m_field->lineEdit(), [this](int by) { emit stepped(by); });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_heading);
    column->addWidget(m_instrument);
    column->addWidget(m_field);
    column->addWidget(m_caution);
    column->addWidget(m_result, 1);
    setFocusProxy(m_field);
    putProxyFirst(*this);
}

std::vector<FastenerId> FastenersClamp::order() const {
    return verifyOrder(facts());
}

void FastenersClamp::refresh(FastenerId selected) {
    m_fastener = selected;
    m_instrument->refresh();
    const auto at = facts().fasteners.find(m_fastener);
    const bool isTight = isTightAsSpecified(facts(), m_fastener);
    m_heading->show(capitalised(qtText(describe(m_fastener))),
                    at == facts().fasteners.end() || !at->second.tightened ? QStringLiteral("—")
                    : at->second.isLoose                                  ? tr("loose")
                                         : broughtTo(at->second.tightened->what, units()),
                    isTight ? CheckState::good : CheckState::notDone, specifiedText(facts(), m_fastener, units()));
    QStringList lines;
    for (const std::string& line : clampWorking(facts(), m_fastener, units())) {
        lines << qtText(line);
    }
    m_result->setPlainText(lines.isEmpty() ? tr("Its clamp was not checked.") : lines.join(QLatin1Char('\n')));
    m_field->setEnabled(isTight);
    m_field->ask(
        isTight ? tr("Torque on / torque off, as 80 / 56") : tr("Tighten it as specified first"),
        qtText(symbol(units().torque)),
        [this](const QString& text) {
            return read(text).map([this](const ClampChecked& entry) {
                return tr("on %1, off %2").arg(qtText(format(entry.on.value, units())),
                                               qtText(format(entry.off.value, units())));
            });
        },
        [this](const QString& text) -> Result<void> {
            const auto entry = read(text);
            const auto stored = entry ? session().append(*entry) : tl::unexpected(entry.error());
            return stored ? Result<void>() : Result<void>(tl::unexpected(stored.error()));
        });
}

Result<ClampChecked> FastenersClamp::read(const QString& text) const {
    const auto part = [&](int at, std::string_view field, const QString& name) {
        return parseTorque(coreText(text.section(QLatin1Char('/'), at, at)), units(),
                           expectedTorque(ClampChecked::kind, field, coreText(name)));
    };
    auto on = part(0, "torque_on", tr("the torque that turns it on"));
    if (!on) {
        return tl::unexpected(on.error());
    }
    auto off = part(1, "torque_off", tr("the torque that turns it back, behind a /"));
    if (!off) {
        return tl::unexpected(off.error());
    }
    ClampChecked entry{m_fastener, std::move(*on), std::move(*off), m_instrument->instrument()};
    const auto good = makesSense(facts(), entry);
    return good ? Result<ClampChecked>(std::move(entry)) : tl::unexpected(good.error());
}

void FastenersClamp::focusField() {
    m_field->setFocus();
}

void FastenersClamp::type(const QString& text) {
    m_field->type(text);
}

} // namespace caprail
