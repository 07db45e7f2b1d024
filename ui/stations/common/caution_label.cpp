// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/caution_label.h>

#include <QCoreApplication>
#include <text/plain_text.h>

namespace caprail {

CautionLabel::CautionLabel(const std::vector<Caution>& cautions, QWidget* parent)
    : Label(parent), m_text(cautionText(cautions)) {
    setWordWrap(true);
    setForegroundRole(QPalette::PlaceholderText);
    setAccessibleDescription(m_text);
    fold(false);
}

void CautionLabel::fold(bool isFolded) {
    setText(isFolded && !m_text.isEmpty() ? QCoreApplication::translate("CautionLabel", "Cautions …") : m_text);
    setToolTip(isFolded ? wrappedTip(m_text) : QString());
}

void CautionLabel::fitAllIn(const QWidget& station) {
    const bool isFolded = station.width() < roomyWidth || station.height() < roomyHeight;
    for (Label* label : station.findChildren<Label*>()) {
        if (auto* caution = dynamic_cast<CautionLabel*>(label)) {
            caution->fold(isFolded);
        }
    }
}

} // namespace caprail
