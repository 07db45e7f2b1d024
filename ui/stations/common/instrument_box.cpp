// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/instrument_box.h>

#include <algorithm>
#include <stations/common/station_text.h>

namespace caprail {

InstrumentBox::InstrumentBox(RecordSession& session, std::vector<InstrumentType> fitting, QWidget* parent)
    : QComboBox(parent), m_session(session), m_fitting(std::move(fitting)) {
    nameBox(*this, tr("Instrument"));
    setSizeAdjustPolicy(AdjustToContents);
    connect(this, &QComboBox::activated, this, [this] { m_isChosen = true; });
    refresh();
}

void InstrumentBox::refresh() {
    const QString chosen = currentData().toString();
    clear();
    addItem(tr("no instrument named"), QString());
    const auto& instruments = m_session.facts().instruments;
    const auto isFitting = [&](const InstrumentAdded& i) {
        return std::ranges::find(m_fitting, i.type) != m_fitting.end();
    };
    for (const bool fitting : {true, false}) {
        for (const auto& [name, seen] : instruments) {
            if (isFitting(seen.latest()) == fitting) {
                addItem(qtText(name) + QStringLiteral("  ") + qtShown(seen.latest().type), qtText(name));
            }
        }
    }
    int index = findData(chosen);
    const bool someFits = count() > 1 && isFitting(instruments.find(coreText(itemData(1).toString()))->second.latest());
    if ((chosen.isEmpty() && !m_isChosen) || index < 0) {
        index = someFits ? 1 : 0;
    }
    setCurrentIndex(index);
}

bool InstrumentBox::choose(const QString& name) {
    const int index = findData(name);
    if (index < 0) {
        return false;
    }
    if (index != currentIndex()) {
        setCurrentIndex(index);
        emit activated(index);
    }
    return true;
}

std::string InstrumentBox::instrument() const {
    return currentData().toString().toStdString();
}

} // namespace caprail
