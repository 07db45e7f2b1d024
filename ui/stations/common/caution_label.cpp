// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/caution_label.h>

#include <QCoreApplication>
#include <QFontInfo>
#include <algorithm>
#include <text/plain_text.h>

namespace caprail {

CautionLabel::CautionLabel(const std::vector<Caution>& cautions, QWidget* parent)
    : Label(parent), m_text(cautionText(cautions)) {
    setWordWrap(true);
    setForegroundRole(QPalette::PlaceholderText);
    setAccessibleDescription(m_text);
    fold(false);
}

void CautionLabel::setMostLines(int lines) {
    m_mostLines = lines;
}

void CautionLabel::fold(bool isFolded) {
    m_isFolded = isFolded;
    setText(isFolded && !m_text.isEmpty() ? QCoreApplication::translate("CautionLabel", "Cautions …") : m_text);
    setToolTip(isFolded ? wrappedTip(m_text) : QString());
}

/// Folded it leaves room, and the station may become narrower: only a wider one than that unfolds it again.
void CautionLabel::foldIfCramped() {
    if (m_mostLines == 0 || m_isFolded || m_station == nullptr) {
        return;
    }
    const QRect text = fontMetrics().boundingRect(0, 0, width(), QWIDGETSIZE_MAX, Qt::TextWordWrap, m_text);
    if (text.height() > m_mostLines * fontMetrics().lineSpacing()) {
        m_crampedAt = m_station->width();
        fold(true);
    }
}

void CautionLabel::resizeEvent(QResizeEvent* event) {
    Label::resizeEvent(event);
    foldIfCramped();
}

bool CautionLabel::isWide(const QWidget& station) {
    constexpr int roomyWidth = 1060, usualText = 12; // pixels
    return station.width() * usualText >= roomyWidth * std::max(usualText, QFontInfo(station.font()).pixelSize());
}

void CautionLabel::fitAllIn(const QWidget& station) {
    constexpr int roomyHeight = 520; // pixels
    const bool isSmall = !isWide(station) || station.height() < roomyHeight;
    for (Label* label : station.findChildren<Label*>()) {
        if (auto* caution = dynamic_cast<CautionLabel*>(label)) {
            caution->m_station = &station;
            const bool isFolded = isSmall || station.width() <= caution->m_crampedAt;
            if (isFolded != caution->m_isFolded) {
                caution->fold(isFolded);
            }
            caution->foldIfCramped();
        }
    }
}

} // namespace caprail
